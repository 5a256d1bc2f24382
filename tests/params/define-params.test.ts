import { describe, expect, test } from 'vitest';
import { defineParams } from '../../lib/params/define-params.ts';
import { choice, count, flag, length, lengths, quantity, text } from '../../lib/params/fields.ts';
import { readValues } from '../../lib/params/read-values.ts';
import type { Rule } from '../../lib/params/rule.ts';
import { group } from '../../lib/params/spec.ts';
import { spec } from './sample-spec.ts';

const width = length({ label: 'width', default: '10 in', min: '1 in', max: '20 in' });
const height = length({ label: 'height', default: '5 in', min: '1 in', max: '20 in' });
const fields = { width, height };

test('the table has every parameter by its path, in the order of the spec', () => {
  expect([...spec.table.keys()]).toEqual([
    'top.length',
    'top.thickness',
    'top.edgeThickness',
    'top.strips',
    'top.layers',
    'top.wood',
    'base.tenons',
    'base.rail.offsets',
    'moisture',
    'note',
  ]);
});

describe('a wrong spec is a bug and throws', () => {
  test.each([
    [
      'a default out of range',
      { a: length({ label: 'a', default: '1 in', min: '2 in', max: '3 in' }) },
      /default of a/,
    ],
    ['a default that is not whole', { a: count({ label: 'a', default: 1.5, min: 1, max: 3 }) }, /default of a.*"1.5"/],
    ['a range the wrong way round', { a: quantity({ label: 'a', unit: '%', default: 5, min: 9, max: 1 }) }, /of a/],
    ['a default that is no option', { a: choice({ label: 'a', options: ['x'], default: 'y' as 'x' }) }, /"y"/],
    ['an option twice', { a: choice({ label: 'a', options: ['x', 'x'] }) }, /a has an option twice: x, x/],
    ['too many in the list', { a: lengths({ label: 'a', default: [5, 5], min: 1, max: 9, maxItems: 1 }) }, /of a/],
    ['a text of two lines', { a: text({ label: 'a', default: 'x\ny' }) }, /control-character/],
    ['a name with a dot', { 'a.b': width }, /a\.b cannot be the path/],
    ['a name with a dash', { top: group('Top', { 'edge-thickness': width }) }, /top\.edge-thickness cannot be/],
  ])('%s', (_, wrong, message) => {
    expect(() => defineParams(wrong)).toThrow(RangeError);
    expect(() => defineParams(wrong)).toThrow(message);
  });

  test('a default that is no length', () => {
    expect(() => length({ label: 'a', default: '1', min: '1 in', max: '2 in' })).toThrow(/"1" is not a length/);
  });

  test('defaults that break a rule', () => {
    const rule: Rule<typeof fields> = {
      fields: ['height', 'width'],
      check: (v) => (v.height < v.width ? { path: 'height', min: v.width, because: 'tall pieces only' } : undefined),
    };
    expect(() => defineParams(fields, [rule])).toThrow('the default of height breaks a rule: tall pieces only');
  });

  test('a rule that reads a field it does not list', () => {
    const rule: Rule<typeof fields> = {
      fields: ['height'],
      check: (v) => (v.height > v.width ? { path: 'height', because: 'too high' } : undefined),
    };
    expect(() => defineParams(fields, [rule])).toThrow('the rule over height reads width, which it does not list');
  });

  test('a rule that complains about a field it does not list', () => {
    const check = () => ({ path: 'width', because: 'never' }) as const;
    expect(() => defineParams(fields, [{ fields: ['height'], check }])).toThrow(
      'the rule over height complains about width, not its own',
    );
  });

  test('a rule over a path that does not exist', () => {
    // @ts-expect-error no such path
    const wrong: Rule<typeof fields> = { fields: ['depth'], check: () => undefined };
    expect(() => defineParams(fields, [wrong])).toThrow('a rule concerns depth, which is no parameter');
  });
});

describe('rules', () => {
  const check: Rule<typeof fields>['check'] = (v) => [
    ...(v.height > v.width ? [{ path: 'height', max: v.width, because: 'not higher than wide' } as const] : []),
    ...(v.height < v.width / 4 ? [{ path: 'height', min: v.width / 4, because: 'not too flat' } as const] : []),
  ];
  const slim = defineParams(fields, [{ fields: ['height', 'width'], check }]);

  test('may return any number of problems, and name both limits though only one is crossed', () => {
    expect(readValues(slim, { width: 100, height: 150 }).issues).toMatchObject([
      { min: 25.4, max: 100, because: 'not higher than wide' },
    ]);
    expect(readValues(slim, { width: 400, height: 50 }).issues).toMatchObject([
      { path: 'height', min: 100, max: 400, because: 'not higher than wide; not too flat', try: '125 mm' },
    ]);
  });

  test('limit whole numbers to whole numbers', () => {
    const rows = { legs: count({ label: 'legs', default: 4, min: 2, max: 20 }), width };
    const spaced = defineParams(rows, [
      {
        fields: ['legs', 'width'],
        check: (v) => {
          const most = v.width / 60;
          return v.legs > most ? { path: 'legs', max: most, because: '60 mm for each' } : undefined;
        },
      },
    ]);
    expect(readValues(spaced, { legs: 9 }).issues).toMatchObject([{ min: 2, max: 4, try: '4' }]);
  });

  test('that contradict each other leave no range, and nothing to try', () => {
    const both = defineParams({ ...fields, tight: flag({ label: 'tight', default: false }) }, [
      {
        fields: ['height', 'tight'],
        check: (v) => (v.tight && v.height > 50 ? { path: 'height', max: 50, because: 'tight' } : undefined),
      },
      {
        fields: ['height', 'tight'],
        check: (v) => (v.tight && v.height < 60 ? { path: 'height', min: 60, because: 'also tight' } : undefined),
      },
    ]);
    expect(readValues(both, { tight: true }).issues).toMatchObject([
      { code: 'rule', path: 'height', because: 'tight', from: 'the default, beside the design file' },
    ]);
    expect(readValues(both, { tight: true }).issues?.[0]?.try).toBeUndefined();
  });

  test('print lengths in the unit of their first field', () => {
    const talk = defineParams(fields, [
      {
        fields: ['height', 'width'],
        check: (v, say) => (v.height > 300 ? { path: 'height', because: `over ${say(300)}` } : undefined),
      },
    ]);
    expect(readValues(talk, { height: '15 in' }).issues).toMatchObject([{ because: 'over 11 13/16 in' }]);
    expect(readValues(talk, { height: 381, width: '9 in' }).issues).toMatchObject([{ because: 'over 300 mm' }]);
  });

  test('types: a rule sees the values of the spec', () => {
    defineParams(fields, [
      // @ts-expect-error a rule cannot read what is not there
      { fields: ['height'], check: (v) => (v.depth > 3 ? { path: 'height', because: 'x' } : undefined) },
    ]);
    expect(slim.rules).toHaveLength(1);
  });
});
