import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choice, count, division, flag, length, lengths, quantity, text } from '../../lib/params/fields.ts';
import type { Param } from '../../lib/params/param.ts';
import { readParam } from '../../lib/params/read-param.ts';
import { renderIssues } from '../../lib/params/render-issue.ts';
import { read, spec } from './sample-spec.ts';

const RUN = { seed: 20_251, numRuns: 500 };

const aLength = length({ label: 'x', default: '1 in', min: '-2 in', max: '4 in' });
const aCount = count({ label: 'x', default: 1, min: 1, max: 9 });
const aQuantity = quantity({ label: 'x', unit: '%', default: 5, min: 4, max: 20 });
const aRatio = quantity({ label: 'x', unit: '', default: 0.5, min: 0, max: 1 });
const aChoice = choice({ label: 'x', options: ['cherry', 'white oak'] });
const aFlag = flag({ label: 'x', default: true });
const aText = text({ label: 'x', default: '', maxLength: 9 });
const aList = lengths({ label: 'x', default: [], min: '1 in', max: '4 in', maxItems: 3 });
const aDivision = division({ label: 'x', default: 2, min: 2, max: 5, minWidth: '1 in', maxWidth: '9 in' });

describe('good', () => {
  test.each<[Param, unknown, unknown]>([
    [aLength, 30, 30],
    [aLength, -30, -30],
    [aLength, -0, 0],
    [aLength, '-0 in', 0],
    [aLength, '-1 1/2 in', -38.1],
    [aCount, 3, 3],
    [aCount, ' 3 ', 3],
    [aQuantity, 7.5, 7.5],
    [aQuantity, '7.5 %', 7.5],
    [aQuantity, ' 7.5% ', 7.5],
    [aRatio, '.25', 0.25],
    [aRatio, -0, 0],
    [aChoice, 'white oak', 'white oak'],
    [aChoice, ' cherry ', 'cherry'],
    [aFlag, false, false],
    [aFlag, 'yes', true],
    [aFlag, 'ON', true],
    [aFlag, 'true', true],
    [aFlag, 'no', false],
    [aFlag, 'off', false],
    [aFlag, 'False', false],
    [aText, ' a = b ', ' a = b '],
    [aText, 'Küche 🪵', 'Küche 🪵'],
    [aList, [], []],
    [aList, '', []],
    [aList, '2 in', [50.8]],
    [aList, '2 in,3in , 30 mm', [50.8, 76.2, 30]],
    [aList, [30, '2 in'], [30, 50.8]],
    [aDivision, 4, 4],
    [aDivision, '4', 4],
    [aDivision, '5 in, 6 in', [127, 152.4]],
    [aDivision, [100, '5 in'], [100, 127]],
  ])('$kind: %j', (param, raw, value) => {
    expect(readParam(param, raw)).toMatchObject({ value });
  });
});

describe('refused', () => {
  test.each<[Param, unknown, readonly string[]]>([
    [aLength, '3', ['no-unit']],
    [aLength, '3 %', ['unreadable']],
    [aLength, `${'1'.repeat(300)} mm`, ['unreadable']],
    [aLength, '5 in', ['out-of-range']],
    [aLength, '-3 in', ['out-of-range']],
    [aLength, Number.POSITIVE_INFINITY, ['wrong-type']],
    [aLength, 3n, ['wrong-type']],
    [aLength, [3], ['wrong-type']],
    [aCount, 0, ['out-of-range']],
    [aCount, -1, ['out-of-range']],
    [aCount, '12345678901234567890', ['out-of-range']],
    [aCount, 2.5, ['not-whole']],
    [aCount, '2.5', ['not-whole']],
    [aCount, '', ['unreadable']],
    [aCount, '2 in', ['unreadable']],
    [aCount, '1e1', ['unreadable']],
    [aCount, '0x3', ['unreadable']],
    [aCount, Number.NaN, ['wrong-type']],
    [aCount, true, ['wrong-type']],
    [aQuantity, '7.5', ['no-unit']],
    [aQuantity, '7.5 kg', ['unreadable']],
    [aQuantity, '%', ['unreadable']],
    [aQuantity, '3 %', ['out-of-range']],
    [aQuantity, Number.NEGATIVE_INFINITY, ['wrong-type']],
    [aRatio, '2', ['out-of-range']],
    [aRatio, 'half', ['unreadable']],
    [aChoice, 'Cherry', ['not-an-option']],
    [aChoice, '', ['not-an-option']],
    [aChoice, 'toString', ['not-an-option']],
    [aChoice, null, ['wrong-type']],
    [aFlag, '', ['unreadable']],
    [aFlag, 'y', ['unreadable']],
    [aFlag, 'constructor', ['unreadable']],
    [aFlag, 1, ['wrong-type']],
    [aText, 'x'.repeat(10), ['text-too-long']],
    [aText, 'a\tb', ['control-character']],
    [aText, 'a\u2028b', ['control-character']],
    [aText, 'a\u202eb', ['control-character']],
    [aText, 'a\ud800b', ['control-character']],
    [aText, 3, ['wrong-type']],
    [aList, '2 in,', ['unreadable']],
    [aList, '2 in, 9 in, 3', ['out-of-range', 'no-unit']],
    [aList, '2 in,2 in,2 in,2 in', ['wrong-size']],
    [aList, 50, ['wrong-type']],
    [aList, [Number.NaN, null, undefined], ['wrong-type', 'wrong-type', 'wrong-type']],
    [aList, '2 in,'.repeat(900), ['unreadable']],
    [aDivision, 1, ['out-of-range']],
    [aDivision, 2.5, ['not-whole']],
    [aDivision, '2.5', ['not-whole']],
    [aDivision, 'even', ['unreadable']],
    [aDivision, '5 in', ['wrong-size']],
    [aDivision, '5, 6', ['no-unit', 'no-unit']],
    [aDivision, [], ['wrong-size']],
    [aDivision, [8], ['wrong-size']],
    [aDivision, false, ['wrong-type']],
  ])('$kind: %j', (param, raw, codes) => {
    expect(readParam(param, raw).faults?.map(({ code }) => code)).toEqual(codes);
  });
});

test('anything at all in a design file is read or refused, and the refusal prints', () => {
  const names = [
    'top',
    'base',
    'rail',
    'moisture',
    'note',
    ...[...spec.table.keys()].flatMap((path) => path.split('.')),
  ];
  const key = fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...names) }, { weight: 1, arbitrary: fc.string() });
  const leaf = fc.oneof(fc.anything({ withBigInt: true, withDate: true, withMap: true }), fc.string(), fc.double());
  const record = fc.dictionary(key, fc.oneof(leaf, fc.dictionary(key, fc.oneof(leaf, fc.dictionary(key, leaf)))));
  const override = fc.record({ path: fc.constantFrom(...spec.table.keys()), text: fc.string() });
  fc.assert(
    fc.property(record, fc.array(override, { maxLength: 3 }), (given, overrides) => {
      const outcome = read(given, ...overrides.map(({ path, text: t }) => `${path}=${t}`));
      if (!outcome.issues) return;
      expect(outcome.issues.length).toBeGreaterThan(0);
      const printed = renderIssues(outcome.issues, 'mm');
      expect(printed).not.toMatch(/undefined parameter|must be \n|must be $|\[object/);
      expect(printed.match(/^error: /gm)).toHaveLength(outcome.issues.length);
    }),
    RUN,
  );
});
