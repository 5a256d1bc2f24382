import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brokenRules } from '../../lib/params/broken-rules.ts';
import { choice, count, division, flag, length, lengths, text } from '../../lib/params/fields.ts';
import { moveParam } from '../../lib/params/move-param.ts';
import type { Param, Value } from '../../lib/params/param.ts';
import { readParam } from '../../lib/params/read-param.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { sampleOther, sampleOthers } from '../../lib/params/sample-other.ts';
import { flattenValues, setPath, valueAt } from '../../lib/params/values.ts';
import { spec } from './sample-spec.ts';

const values = readValues(spec).values!;

describe('sampleOther', () => {
  test('gives valid values that differ from the current one', () => {
    for (const [path, param] of spec.table) {
      const current = valueAt(values, path);
      const others: readonly Value[] = sampleOthers<Param>(param, current as never);
      expect(others.length, path).toBeGreaterThan(0);
      for (const other of others) {
        expect(other).not.toEqual(current);
        expect(readParam(param, other).value).toEqual(other);
      }
      expect(sampleOthers<Param>(param, current as never)).toEqual(others);
    }
  });

  test('moves a length by a tenth of its range, onto a 64th', () => {
    const param = length({ label: 'x', default: '5 in', min: '1 in', max: '11 in' });
    expect(sampleOther(param, 127)).toBe(152.4);
    expect(sampleOther(param, 279.4)).toBe(254);
    expect(sampleOther(param, 200)).toBeCloseTo(225.4, 0);
  });

  test('finds another value from anywhere in the range', () => {
    const param = length({ label: 'x', default: '5 in', min: '1 in', max: '5 in' });
    fc.assert(
      fc.property(fc.double({ min: 25.4, max: 127, noNaN: true }), (current) => {
        const other = sampleOther(param, current);
        expect(other !== undefined && other !== current && other >= 25.4 && other <= 127).toBe(true);
      }),
      { seed: 20_255, numRuns: 500 },
    );
  });

  test('has nothing to give when there is only one value', () => {
    expect(sampleOther(length({ label: 'x', default: 5, min: 5, max: 5 }), 5)).toBeUndefined();
    expect(sampleOther(count({ label: 'x', default: 5, min: 5, max: 5 }), 5)).toBeUndefined();
    expect(sampleOther(choice({ label: 'x', options: ['a'] }), 'a')).toBeUndefined();
    expect(sampleOther(text({ label: 'x', default: '', maxLength: 0 }), '')).toBeUndefined();
    expect(sampleOther(lengths({ label: 'x', default: [], min: 1, max: 2, maxItems: 0 }), [])).toBeUndefined();
  });

  test('knows every kind', () => {
    const pieces = division({ label: 'x', default: 2, min: 2, max: 3, minWidth: 10, maxWidth: 20 });
    expect(sampleOther(pieces, 2)).toBe(3);
    expect(sampleOther(pieces, 3)).toBe(2);
    expect(sampleOther(pieces, [20, 10])).not.toEqual([20, 10]);
    const list = lengths({ label: 'x', default: [], min: 10, max: 20, minItems: 0, maxItems: 2 });
    expect(sampleOther(list, [])).toEqual([15]);
    expect(sampleOthers(list, [15, 15])).toContainEqual([15]);
    expect(sampleOther(choice({ label: 'x', options: ['a', 'b', 'c'] }), 'b')).toBe('c');
    expect(sampleOther(choice({ label: 'x', options: ['a', 'b', 'c'] }), 'c')).toBe('a');
    expect(sampleOther(flag({ label: 'x', default: true }), true)).toBe(false);
    expect(sampleOther(text({ label: 'x', default: '', maxLength: 3 }), 'xxx')).toBe('xx');
  });
});

describe('moveParam', () => {
  test('moves one parameter and keeps the rules', () => {
    for (const path of spec.table.keys()) {
      const moved = moveParam(spec, values, path as 'note')!;
      expect(brokenRules(spec, moved)).toEqual([]);
      const changed = [...flattenValues(spec, moved)].filter(([at, value]) => valueAt(values, at) !== value);
      expect(changed.map(([at]) => at)).toEqual([path]);
    }
  });

  test('takes another direction when a rule forbids the first', () => {
    const thick = setPath(spec, values, 'top.edgeThickness', values.top.thickness);
    expect(moveParam(spec, thick, 'top.edgeThickness')?.top.edgeThickness).toBeLessThan(thick.top.edgeThickness);
    expect(moveParam(spec, thick, 'top.thickness')?.top.thickness).toBeGreaterThan(thick.top.thickness);
  });

  test('an unknown path is our bug', () => {
    // @ts-expect-error no such path
    expect(() => moveParam(spec, values, 'top.depth')).toThrow('there is no parameter top.depth');
  });
});

describe('values by path', () => {
  test('flatten in the order of the table', () => {
    expect([...flattenValues(spec, values).keys()]).toEqual([...spec.table.keys()]);
    expect(flattenValues(spec, values).get('base.rail.offsets')).toEqual([254, 508]);
  });

  test('set one in a frozen copy', () => {
    const next = setPath(spec, values, 'base.tenons', false);
    expect(next).toEqual({ ...values, base: { ...values.base, tenons: false } });
    expect(values.base.tenons).toBe(true);
    expect(Object.isFrozen(next.base)).toBe(true);
  });

  test('an unknown path is our bug', () => {
    expect(() => valueAt(values, 'top.depth')).toThrow('there is no value at top.depth');
    expect(() => valueAt(values, 'note.length')).toThrow('there is no value at note.length');
    expect(() => setPath(spec, values, 'top', 3)).toThrow('there is no parameter top');
  });
});
