import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hiddenLines } from '../../lib/derive/drawings/hidden-lines.ts';
import type { PlacedSolid } from '../../lib/derive/drawings/placed-solid.ts';
import { type View, viewFrom } from '../../lib/derive/drawings/view.ts';
import { cross, type Vec3 } from '../../lib/geometry/vec.ts';
import { compare, compareOutlines } from './sampling-oracle.ts';
import { block } from './scenes.ts';

const triple = (least: number, most: number): fc.Arbitrary<Vec3> => {
  const number = fc.double({ min: least, max: most, noNaN: true });
  return fc.tuple(number, number, number);
};

/** Looks from anywhere but the floor's own poles. */
const view: fc.Arbitrary<View> = triple(-1, 1)
  .filter(([x, y]) => Math.hypot(x, y) > 0.05)
  .map((toward) => viewFrom(toward));

const placed: fc.Arbitrary<PlacedSolid> = fc
  .record({ size: triple(20, 120), origin: triple(-60, 60), turned: view })
  .map(({ size, origin, turned }) => ({
    part: `block ${origin.join(' ')}`,
    solid: block(size),
    frame: { origin, x: turned.right, y: cross(turned.toward, turned.right) },
  }));

test('blocks anywhere, seen from anywhere, as rays see them', () => {
  let looked = 0;
  let onOutline = 0;
  fc.assert(
    fc.property(fc.array(placed, { minLength: 1, maxLength: 5 }), view, (solids, look) => {
      const found = compare(solids, look, hiddenLines(solids, look));
      looked += found.looked;
      onOutline += found.onOutline;
      expect(found.wrong).toEqual([]);
    }),
    { seed: 20, numRuns: 60 },
  );
  expect(looked).toBeGreaterThan(12_000);
  // Points within 0.01 mm of an outline in projection: where one edge runs under another.
  expect(onOutline / looked).toBeLessThan(0.002);
});

test('a block alone has an outline all around and only inner lines within', () => {
  fc.assert(
    fc.property(placed, view, (solid, look) => {
      expect(compareOutlines([solid], look, hiddenLines([solid], look))).toEqual([]);
    }),
    { seed: 21, numRuns: 60 },
  );
});
