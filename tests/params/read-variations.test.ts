import { describe, expect, test } from 'vitest';
import design from '../../designs/reading-table/design.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { readVariations } from '../../lib/params/read-variations.ts';
import { renderIssue } from '../../lib/params/render-issue.ts';
import { spec } from './sample-spec.ts';

const values = readValues(design.params, design.values).values!;

const read = (...given: readonly string[]) => readVariations(design.params, values, given, 'in');

/** The values of one variation. */
const valuesOf = (given: string): readonly unknown[] | undefined => read(given).variations?.[0]?.values;

/** What is told of wrong ones. */
const told = (...given: readonly string[]): string =>
  (read(...given).issues ?? []).map((issue) => renderIssue(issue, 'in')).join('\n\n');

describe('what can be tried', () => {
  test('a range, both ends included', () => {
    expect(valuesOf('top.edgeThickness=1in..1 1/2in:5')).toEqual([25.4, 28.575, 31.75, 34.925, 38.1]);
    expect(valuesOf('top.edgeThickness = 25 mm .. 35 mm : 3')).toEqual([25, 30, 35]);
    expect(valuesOf('top.edgeThickness=1 1/2 in..1 in:3')).toEqual([38.1, 31.75, 25.4]);
  });

  test('five values unless it says how many; between the ends what a maker can set', () => {
    expect(valuesOf('top.edgeThickness=20 mm..30 mm')).toEqual([20, 22.5, 25, 27.5, 30]);
    // 1 in and a third of 1/2 in is 1 11/64 in to the nearest 1/64 in: 75/64 of 25.4 mm.
    expect(valuesOf('top.edgeThickness=1 in..1 1/2 in:4')?.[1]).toBe((75 * 127) / 320);
    expect(valuesOf('top.edgeThickness=20 mm..21 mm:4')).toEqual([20, 20.3, 20.7, 21]);
  });

  test('every whole number of a short range of counts, or so many of a long one', () => {
    expect(valuesOf('fixing.perSide=1..4')).toEqual([1, 2, 3, 4]);
    expect(valuesOf('top.strips=4..12:5')).toEqual([4, 6, 8, 10, 12]);
    expect(valuesOf('top.strips=6,8')).toEqual([6, 8]);
  });

  test('lists: lengths, choices, yes and no', () => {
    expect(valuesOf('top.thickness=2 in, 57 mm')).toEqual([50.8, 57]);
    expect(valuesOf('frame.kind=bearer,posts,panel')).toEqual(['bearer', 'posts', 'panel']);
    expect(valuesOf('edgeJoint.tenons=yes,no')).toEqual([true, false]);
  });

  test('two at a time', () => {
    const { variations } = read('top.thickness=2 in,3 in', 'top.wood=cherry,walnut');
    expect(variations?.map(({ path }) => path)).toEqual(['top.thickness', 'top.wood']);
  });
});

describe('what cannot, told with what is allowed and what to try', () => {
  test('no range at all', () => {
    expect(told('top.edgeThickness')).toMatchInlineSnapshot(`
      "error: "top.edgeThickness" does not say what to try; write path=from..to:count or path=one,other
             there is no = in it
             try --vary "top.edgeThickness=1/2 in..2 1/4 in:5""
    `);
    expect(told('=1 in..2 in')).toContain('there is no path before the =');
  });

  test('a range without an end', () => {
    expect(told('top.edgeThickness=1 in..')).toMatchInlineSnapshot(`
      "error: top.edgeThickness cannot be tried over "1 in.."; it must be from..to, from..to:how many, or values with commas between
             each value is a length, 1/4 in to 5 in
             nothing stands behind the two dots
             given by --vary "top.edgeThickness=1 in.."
             try --vary "top.edgeThickness=1/2 in..2 1/4 in:5""
    `);
    expect(told('top.edgeThickness=..1 in')).toContain('nothing stands before the two dots');
  });

  test('an end without a unit', () => {
    expect(told('top.edgeThickness=1..1 1/2 in:5')).toMatchInlineSnapshot(`
      "error: top.edgeThickness is "1", without a unit; write 1 mm or 1 in
             given by --vary "top.edgeThickness=1..1 1/2 in:5"
             try --vary "top.edgeThickness=1 in..1 1/2 in:5""
    `);
  });

  test('a wrong number of values', () => {
    expect(told('top.edgeThickness=1 in..2 in:many')).toContain('how many is "many"; it must be 2 to 25');
    expect(told('top.edgeThickness=1 in..2 in:1')).toContain('how many is "1"; it must be 2 to 25');
    expect(told('top.edgeThickness=1 in..2 in:26')).toContain('how many is "26"');
    expect(told('top.edgeThickness=1 in..1 1/64 in:5')).toContain('5 values are closer together');
    expect(told('top.edgeThickness=1 in..1 in')).toContain('both ends are the same');
    expect(told('top.edgeThickness=1 in')).toContain('one value is nothing to compare');
    expect(told('top.edgeThickness=')).toContain('one value is nothing to compare');
    expect(told('top.edgeThickness=1 in, 25.4 mm')).toContain('25.4 mm stands in it twice');
    expect(told('top.strips=4..9:3')).toContain('3 values from 4 to 9 are not whole');
  });

  test('an entry that is none of the options', () => {
    expect(told('frame.kind=bearer,post')).toMatchInlineSnapshot(`
      "error: frame.kind is "post"; it must be bearer, posts or panel
             did you mean posts?
             given by --vary "frame.kind=bearer,post"
             try --vary "frame.kind=bearer,posts,panel""
    `);
    expect(told('edgeJoint.tenons=yes,perhaps')).toContain('edgeJoint.tenons is "perhaps"; it must be yes or no');
  });

  test('names that nothing has', () => {
    expect(told('top.edge=1 in..2 in')).toContain('there is no parameter top.edge');
    expect(told('top=1 in..2 in')).toContain('top is a group of parameters');
    expect(told('top.length.max=1 in..2 in')).toContain('top.length is a parameter, not a group');
  });

  test('too much at once', () => {
    const [a, b] = ['top.thickness=2 in,3 in', 'top.wood=cherry,walnut'];
    expect(told(a, b, 'top.layers=1,2')).toContain('one parameter or two can be tried at a time; this is the third');
    expect(told(a, a)).toContain('top.thickness cannot be tried over a range\n       it is given twice');
    expect(told('top.thickness=1 in..4 in:25', 'top.length=60 in..90 in:25')).toContain('it makes 625 pieces to try');
  });

  test('a text, and a list', () => {
    const sample = readValues(spec).values!;
    const issues = (given: string) => readVariations(spec, sample, [given], 'in').issues ?? [];
    expect(issues('note=a,b')).toMatchObject([
      { code: 'cannot-vary', because: expect.stringContaining('it is a text') },
    ]);
    expect(issues('base.rail.offsets=1 in,2 in')).toMatchObject([{ code: 'cannot-vary' }]);
  });

  test('and what it says to try is accepted', () => {
    for (const path of design.params.table.keys()) {
      const [issue] = read(path).issues!;
      if (issue!.try === undefined) continue;
      expect(read(`${path}=${issue!.try}`).issues, `${path}=${issue!.try}`).toBeUndefined();
    }
  });
});
