import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toInner, toOuter, turnIn, turnOut, within, zAxis } from '../../lib/geometry/frame.ts';
import { cross, dot, sub, type Vec3 } from '../../lib/geometry/vec.ts';
import { frames, origin } from './random-frames.ts';

const expectSame = (a: Vec3, b: Vec3): void => expect(Math.hypot(...sub(a, b))).toBeLessThan(1e-8);

// Source: what makes a rigid motion; inverse and composition.
test('out and in again is where it was; lengths stay; nothing is mirrored', () => {
  fc.assert(
    fc.property(frames, origin, origin, (frame, p, d) => {
      expectSame(toInner(frame, toOuter(frame, p)), p);
      expectSame(turnIn(frame, turnOut(frame, d)), d);
      expect(Math.hypot(...turnOut(frame, d))).toBeCloseTo(Math.hypot(...d), 8);
      expect(Math.hypot(...sub(toOuter(frame, p), toOuter(frame, d)))).toBeCloseTo(Math.hypot(...sub(p, d)), 8);
      const z = zAxis(frame);
      expect(dot(z, cross(frame.x, frame.y))).toBeCloseTo(1, 12);
      expectSame(turnOut(frame, [0, 0, 1]), z);
    }),
    { seed: 3, numRuns: 500 },
  );
});

test('a frame within a frame is one after the other', () => {
  fc.assert(
    fc.property(frames, frames, origin, (outer, inner, p) => {
      expectSame(toOuter(within(outer, inner), p), toOuter(outer, toOuter(inner, p)));
    }),
    { seed: 4, numRuns: 500 },
  );
});

test('a quarter turn is exact', () => {
  const turned = { origin: [10, 20, 30], x: [0, 1, 0], y: [-1, 0, 0] } as const;
  expect(toOuter(turned, [1, 2, 3])).toEqual([8, 21, 33]);
  expect(toInner(turned, [8, 21, 33])).toEqual([1, 2, 3]);
});
