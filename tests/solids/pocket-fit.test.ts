import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pocketFits } from '../../lib/derive/solids/pocket-fit.ts';
import { volumeOf } from '../../lib/derive/solids/solid.ts';
import { solidOf } from '../../lib/derive/solids/solid-of.ts';
import { unit, type Vec3 } from '../../lib/geometry/vec.ts';
import type { Mortise } from '../../lib/model/feature.ts';
import type { Part } from '../../lib/model/part.ts';
import { board } from '../../lib/parts/board.ts';
import { booleanOf } from './boolean-of.ts';
import { release } from './kernel.ts';

const SIDES: readonly { readonly at: Vec3; readonly into: Vec3; readonly along: Vec3; readonly up: Vec3 }[] = [
  { at: [0, 30, 0], into: [0, 0, 1], along: [1, 0, 0], up: [0, 1, 0] },
  { at: [0, 30, 50], into: [0, 0, -1], along: [0, 1, 0], up: [1, 0, 0] },
  { at: [0, 0, 25], into: [0, 1, 0], along: [1, 0, 0], up: [0, 0, 1] },
  { at: [0, 60, 25], into: [0, -1, 0], along: unit([1, 0, 1]), up: unit([1, 0, -1]) },
  { at: [0, 30, 25], into: [1, 0, 0], along: [0, 1, 0], up: [0, 0, 1] },
];

/** A leg 60 x 50 mm whose far end is cut on a slope, 100 to 130 mm long. */
const leg = (features: readonly Mortise[]): Part => ({
  ...board({ id: 'leg', mark: 'A', kind: 'post', wood: 'cherry', length: 130, width: 60, thickness: 50, features }),
  body: {
    kind: 'prism',
    thickness: 50,
    outline: [
      { x: 0, y: 0 },
      { x: 130, y: 0 },
      { x: 100, y: 60 },
      { x: 0, y: 60 },
    ],
  },
});

/** Each mortise is off by a fraction of its own, so that two never merely touch. */
const mortise = (id: string, shift: number): fc.Arbitrary<Mortise> =>
  fc
    .record({
      side: fc.constantFrom(...SIDES),
      x: fc.integer({ min: 5, max: 125 }),
      off: fc.integer({ min: -15, max: 15 }),
      length: fc.integer({ min: 16, max: 40 }),
      width: fc.integer({ min: 6, max: 14 }),
      depth: fc.integer({ min: 8, max: 58 }).map((n) => n + 0.31),
      ends: fc.constantFrom('round' as const, 'square' as const),
    })
    .map(({ side, x, off, ...size }): Mortise => {
      const from = side.into[0] === 1 ? 0 : x;
      const at = [from, 0, 0].map((k, i) => k + side.at[i]! + off * side.up[i]!) as unknown as Vec3;
      const moved = at.map((k, i) => (side.into[i] === 0 ? k + shift : k)) as unknown as Vec3;
      return { kind: 'mortise', id, at: moved, into: side.into, along: side.along, play: 0, ...size };
    });

// Source: manifold-3d. Cuts that keep clear take away what their cutters take; cuts that cross or come out do not.
test('the wood around a pocket is there, or is not there, as manifold-3d says', () => {
  let [clear, crossed] = [0, 0];
  fc.assert(
    fc.property(mortise('first', 0.142), mortise('second', 0.373), (first, second) => {
      const part = leg([first, second]);
      const fits = pocketFits(part, 1);
      // A mortise beside the wood is refused and takes nothing away.
      fc.pre(fits.every((fit) => fit.refused !== 'there is no face under its mouth'));
      const good = fits.every((fit) => fit.refused === undefined && fit.wall > 0);
      const truth = booleanOf(part).volume();
      release();
      const same = Math.abs(volumeOf(solidOf(part).solid) - truth) < 1e-3;
      expect(same).toBe(good);
      if (good) clear += 1;
      else crossed += 1;
    }),
    { seed: 53, numRuns: 800 },
  );
  expect(Math.min(clear, crossed)).toBeGreaterThan(200);
});
