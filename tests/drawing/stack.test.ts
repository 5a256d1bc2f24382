import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { baseline } from '../../lib/drawing/baseline.ts';
import { chain } from '../../lib/drawing/chain.ts';
import type { Pt } from '../../lib/drawing/entity.ts';
import { spread } from '../../lib/drawing/spread.ts';
import type { StackSide } from '../../lib/drawing/stack.ts';
import { DEFAULT_STYLE, type Style } from '../../lib/drawing/style.ts';
import { collisions } from './clear.ts';
import { linear } from './samples.ts';

const BOTH: Style = {
  ...DEFAULT_STYLE,
  lengths: { system: 'both', denominator: 64, rounding: 'nearest', decimals: 1 },
};
const SIDES: readonly StackSide[] = ['above', 'below', 'left', 'right'];

/** Points on the edge of a part, along x for above and below, along y for left and right. */
const onEdge = (side: StackSide, places: readonly number[]): readonly Pt[] =>
  places.map((place): Pt => (side === 'above' || side === 'below' ? [place, 0] : [0, place]));

describe('the test of collisions', () => {
  test('sees a text over a text and a line through a text', () => {
    const two = [linear([0, 0], [60, 0], 0, [0, 10]), linear([0, 0], [60, 0], 0, [0, 11])];
    const found = collisions(two, DEFAULT_STYLE).join('\n');
    expect(found).toContain('over');
    expect(found).toContain('crossed by');
  });
});

describe('baseline', () => {
  test('one level a feature, the shortest next to the part, 10 mm out and 8 mm apart', () => {
    const { dims, levels } = baseline(
      [
        [150, 0],
        [60, 0],
        [100, 5],
      ],
      [0, 0],
      'above',
      DEFAULT_STYLE,
      { edge: 5 },
    );
    expect(levels).toBe(3);
    expect(dims.map((dim) => [dim.to[0], dim.at[1]])).toEqual([
      [60, 15],
      [100, 23],
      [150, 31],
    ]);
    expect(dims.every((dim) => dim.from[0] === 0 && dim.angle === 0)).toBe(true);
  });

  test('points at one distance share a dimension, that of the point nearest the side', () => {
    const { dims } = baseline(
      [
        [60, -40],
        [60, -10],
        [0, -40],
      ],
      [0, 0],
      'above',
      DEFAULT_STYLE,
    );
    expect(dims.map((dim) => dim.to)).toEqual([[60, -10]]);
  });

  test('features on both hands share levels; a next stack starts after them', () => {
    const first = baseline(
      [
        [60, 0],
        [-60, 0],
      ],
      [0, 0],
      'below',
      DEFAULT_STYLE,
    );
    expect(first.levels).toBe(1);
    expect(first.dims.map((dim) => dim.at[1])).toEqual([-10, -10]);
    const second = baseline([[60, 0]], [0, 0], 'below', DEFAULT_STYLE, { level: first.levels });
    expect(second.dims[0]!.at[1]).toBe(-18);
  });

  test('text that fits nowhere on its level moves to a level of its own', () => {
    const { dims, levels } = baseline(
      [
        [5, 0],
        [10, 0],
        [-5, 0],
      ],
      [0, 0],
      'above',
      BOTH,
    );
    expect(levels).toBeGreaterThan(1);
    expect(collisions(dims, BOTH)).toEqual([]);
  });

  test('several such texts: the longer dimension inside, so that no extension line crosses them', () => {
    const { dims, levels } = baseline(onEdge('above', [5, 10, 20, 70, -10, -20]), [0, 0], 'above', BOTH);
    expect(levels).toBe(4);
    const level = (place: number) => dims.find((dim) => dim.to[0] === place)!.at[1];
    expect([20, 70, 10, 5].map(level)).toEqual([10, 18, 26, 34]);
    expect(collisions(dims, BOTH)).toEqual([]);
  });

  test('text does not go beyond the datum where a feature of the other hand still passes on its way out', () => {
    const { dims } = baseline(onEdge('above', [30, 31, 31.4, 32, -5, -8]), [0, 0], 'above', BOTH);
    expect(collisions(dims, BOTH)).toEqual([]);
  });

  test.each(SIDES)('from a datum at the end, on the side %s, nothing collides', (side) => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 8 }), (places) => {
        const { dims, levels } = baseline(onEdge(side, places), [0, 0], side, BOTH);
        expect(dims).toHaveLength(places.length);
        expect(levels).toBe(places.length);
        expect(collisions(dims, BOTH)).toEqual([]);
      }),
      { seed: 12, numRuns: 300 },
    );
  });

  test('nothing to measure, or lines too close for the lettering, is an error', () => {
    expect(() => baseline([[0, 9]], [0, 0], 'above', DEFAULT_STYLE)).toThrow(
      'none of 1 points is away from the datum 0, 0',
    );
    expect(() => baseline([[9, 9]], [0, 0], 'above', { ...DEFAULT_STYLE, nextSpacing: 4 })).toThrow(
      'lettering needs 4.85 mm',
    );
  });
});

describe('chain', () => {
  test('measures from each place to the next, on one line', () => {
    const { dims, levels } = chain(onEdge('right', [300, 0, 100]), 'right', DEFAULT_STYLE);
    expect(levels).toBe(1);
    expect(dims.map((dim) => [dim.from[1], dim.to[1], dim.at[0]])).toEqual([
      [0, 100, 10],
      [100, 300, 10],
    ]);
  });

  test('narrow links: text beyond the ends or in a second row, strokes between neighbors', () => {
    const { dims, levels } = chain(onEdge('above', [0, 3, 60, 65, 69, 130, 134]), 'above', BOTH);
    expect(levels).toBe(2);
    expect(dims[0]!.placement?.text).toBe('before');
    expect(dims.at(-1)!.placement?.text).toBe('after');
    expect(dims[2]!.placement?.ends).toEqual(['out', 'stroke']);
    expect(collisions(dims, BOTH)).toEqual([]);
  });

  test.each(SIDES)('wide links with one or two narrow ones between, on the side %s: nothing collides', (side) => {
    const wide = fc.integer({ min: 90, max: 200 });
    const narrow = fc.array(fc.integer({ min: 1, max: 15 }), { minLength: 0, maxLength: 2 });
    fc.assert(
      fc.property(fc.array(fc.tuple(wide, narrow), { minLength: 1, maxLength: 4 }), (groups) => {
        const places = [0];
        for (const width of groups.flatMap(([one, rest]) => [one, ...rest])) places.push(places.at(-1)! + width);
        expect(collisions(chain(onEdge(side, places), side, BOTH).dims, BOTH)).toEqual([]);
      }),
      { seed: 77, numRuns: 300 },
    );
  });

  test('fewer than two places is an error', () => {
    expect(() => chain([[1, 1]], 'above', DEFAULT_STYLE)).toThrow('it has 1');
  });
});

test('spread keeps the order, moves no more than it must, and nothing overlaps', () => {
  expect(
    spread([
      { middle: 0, width: 4 },
      { middle: 10, width: 4 },
    ]),
  ).toEqual([0, 10]);
  expect(
    spread([
      { middle: 5, width: 4 },
      { middle: 5, width: 4 },
    ]),
  ).toEqual([3, 7]);
  const wish = fc.record({
    middle: fc.double({ min: 0, max: 100, noNaN: true }),
    width: fc.double({ min: 1, max: 20, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(wish, { maxLength: 12 }), (wishes) => {
      const sorted = [...wishes].sort((a, b) => a.middle - b.middle);
      const middles = spread(sorted);
      middles.slice(1).forEach((middle, i) => {
        const gap = middle - middles[i]! - (sorted[i]!.width + sorted[i + 1]!.width) / 2;
        expect(gap).toBeGreaterThan(-1e-9);
      });
    }),
    { seed: 3, numRuns: 300 },
  );
});
