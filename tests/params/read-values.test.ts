import { describe, expect, expectTypeOf, test } from 'vitest';
import { readSources, readValues } from '../../lib/params/read-values.ts';
import type { Given, Spec, Values } from '../../lib/params/spec.ts';
import type { Mm } from '../../lib/units/mm.ts';
import { read, sets, spec } from './sample-spec.ts';

const DEFAULTS = {
  top: { length: 2133.6, thickness: 57.15, edgeThickness: 28.575, strips: 8, layers: 1, wood: 'cherry' },
  base: { tenons: true, rail: { offsets: [254, 508] } },
  moisture: 7.5,
  note: '',
};

describe('values', () => {
  test('nothing given: the defaults', () => {
    expect(readValues(spec)).toEqual({ values: DEFAULTS });
    expect(readValues(spec, { top: {} })).toEqual({ values: DEFAULTS });
    expect(read(undefined)).toEqual({ values: DEFAULTS });
    expect(read({ top: undefined, note: undefined, base: { rail: { offsets: undefined } } })).toEqual({
      values: DEFAULTS,
    });
  });

  test('numbers are millimeters, text carries its unit', () => {
    const given: Given<typeof spec> = {
      top: { length: 1800, thickness: '2 in', strips: [100, '5 in'], wood: 'white oak' },
      base: { tenons: false, rail: { offsets: '10 in, 300 mm' } },
      moisture: '8 %',
      note: 'for the kitchen',
    };
    expect(readValues(spec, given).values).toEqual({
      top: { ...DEFAULTS.top, length: 1800, thickness: 50.8, strips: [100, 127], wood: 'white oak' },
      base: { tenons: false, rail: { offsets: [254, 300] } },
      moisture: 8,
      note: 'for the kitchen',
    });
  });

  test('an override wins over the design file, a later source over an earlier one', () => {
    const given = { top: { length: 1800, thickness: 50 } };
    expect(readValues(spec, given, sets('top.length=70 in')).values?.top).toMatchObject({
      length: 1778,
      thickness: 50,
    });
    const sources = [
      { values: given, from: 'the design file' },
      { values: { top: { thickness: 45 } }, from: 'sizes.json' },
    ];
    expect(readSources(spec, sources).values?.top).toMatchObject({ length: 1800, thickness: 45 });
  });

  test('a bad value that is replaced is not read, a bad name always', () => {
    expect(read({ top: { length: 'long' } }, 'top.length=70 in').values?.top.length).toBe(1778);
    expect(read({ top: { lenght: 3 } }, 'top.length=70 in').issues).toMatchObject([{ path: 'top.lenght' }]);
  });

  test('an empty text is an empty list, and an empty text', () => {
    expect(read({ note: 'x' }, 'base.rail.offsets=', 'note=').values).toMatchObject({
      base: { rail: { offsets: [] } },
      note: '',
    });
  });

  test('are frozen to the bottom', () => {
    const { values } = read({ top: { strips: [100, 100] } });
    expect([values, values?.top, values?.base.rail, values?.base.rail.offsets, values?.top.strips]).toSatisfy(
      (parts: readonly unknown[]) => parts.every((part) => Object.isFrozen(part)),
    );
    expect(Object.isFrozen(read({}).values?.base.rail.offsets)).toBe(true);
  });

  test('the input is not changed and not kept', () => {
    const offsets = [300, 400];
    const given = { base: { rail: { offsets } } };
    const { values } = read(given);
    offsets.push(500);
    expect(values?.base.rail.offsets).toEqual([300, 400]);
    expect(Object.isFrozen(given.base)).toBe(false);
  });

  test('-0 becomes 0', () => {
    expect(read({ top: { length: -0 } }).issues).toMatchObject([{ given: '0 mm' }]);
  });
});

describe('issues', () => {
  test('come all at once in the order of the table, unknown names last', () => {
    const { issues } = read(
      { nothing: 1, note: 3, top: { wood: 'oakk', layers: 9, length: null }, base: 7 },
      'moisture=3',
      'top.strips=99',
      'top.edgeThickness=5 in',
      'bogus=2',
      'top.layers.x=1',
    );
    expect(issues?.map(({ path, code }) => `${path} ${code}`)).toEqual([
      'top.length wrong-type',
      'top.edgeThickness out-of-range',
      'top.strips out-of-range',
      'top.layers parameter-as-group',
      'top.wood not-an-option',
      'base group-as-parameter',
      'moisture no-unit',
      'note wrong-type',
      'nothing unknown',
      'bogus unknown',
    ]);
  });

  test('are data that survives JSON', () => {
    const { issues } = read({}, 'top.edgeThickness=3 mm');
    expect(JSON.parse(JSON.stringify(issues))).toEqual([
      {
        code: 'out-of-range',
        path: 'top.edgeThickness',
        kind: 'length',
        given: '3 mm',
        from: '--set "top.edgeThickness=3 mm"',
        unit: 'mm',
        min: 6,
        max: 57.15,
        because: 'the upper limit is top.thickness; under 6 mm an edge chips in use',
        try: '11 mm',
      },
    ]);
  });

  test('a rule does not run over a field that was not read', () => {
    expect(read({ top: { thickness: null, edgeThickness: '3 in' } }).issues).toMatchObject([{ path: 'top.thickness' }]);
    expect(read({ top: 3 }, 'base.rail.offsets=60 in').issues).toMatchObject([{ path: 'top' }]);
  });

  test('a limit is itself good', () => {
    expect(read({ top: { thickness: '2 in', edgeThickness: '2 in' } }).values?.top.edgeThickness).toBe(50.8);
    expect(read({}, 'top.edgeThickness=6 mm', 'top.length=12 ft').values?.top).toMatchObject({
      edgeThickness: 6,
      length: 3657.6,
    });
  });

  test('the same value twice is no contradiction', () => {
    expect(read({}, 'top.length=70 in', 'top.length=1778 mm').values?.top.length).toBe(1778);
    expect(read({}, 'top.length=70', 'top.length=70').issues).toMatchObject([{ code: 'no-unit' }]);
    expect(read({}, 'top.length=70', 'top.length=71').issues).toMatchObject([{ code: 'repeated' }]);
    expect(read({}, 'zzzz=70', 'zzzz=71').issues).toHaveLength(1);
  });

  test('inherited and dangerous names are unknown, not read', () => {
    const hostile = JSON.parse('{ "__proto__": { "length": 3 }, "constructor": 1, "top": { "toString": 2 } }');
    expect(read(hostile, 'hasOwnProperty=1', 'top.constructor=2', '__proto__.length=3').issues).toHaveLength(6);
    expect(read(new Map([['top', 3]])).issues).toMatchObject([{ code: 'group-as-parameter' }]);
  });
});

test('types follow the spec', () => {
  expectTypeOf<Values<typeof spec>>().toEqualTypeOf<{
    readonly top: {
      readonly length: Mm;
      readonly thickness: Mm;
      readonly edgeThickness: Mm;
      readonly strips: number | readonly Mm[];
      readonly layers: number;
      readonly wood: 'cherry' | 'walnut' | 'white oak';
    };
    readonly base: { readonly tenons: boolean; readonly rail: { readonly offsets: readonly Mm[] } };
    readonly moisture: number;
    readonly note: string;
  }>();
  const good = readValues(spec, { top: { length: 2000 } }).values;
  expectTypeOf(good).toEqualTypeOf<Values<typeof spec> | undefined>();
  expectTypeOf(spec).toExtend<Spec>();
  // @ts-expect-error there is no such group
  expect(readValues(spec, { tops: {} }).issues).toHaveLength(1);
  // @ts-expect-error there is no such parameter
  expect(readValues(spec, { top: { lenght: 3 } }).issues).toHaveLength(1);
  // @ts-expect-error not an option
  expect(readValues(spec, { top: { wood: 'pine' } }).issues).toHaveLength(1);
  // @ts-expect-error a flag is not a number
  expect(readValues(spec, { base: { tenons: 1 } }).issues).toHaveLength(1);
});
