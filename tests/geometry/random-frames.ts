import fc from 'fast-check';
import type { Frame } from '../../lib/geometry/frame.ts';
import { cross, unit, type Vec3 } from '../../lib/geometry/vec.ts';

const number = (least: number, most: number): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });

const direction: fc.Arbitrary<Vec3> = fc
  .tuple(number(-1, 1), number(-1, 1), number(-1, 1))
  .filter((d) => Math.hypot(...d) > 0.1)
  .map(unit);

export const origin: fc.Arbitrary<Vec3> = fc.tuple(number(-2000, 2000), number(-2000, 2000), number(-2000, 2000));

/** Anywhere, turned any way. */
export const frames: fc.Arbitrary<Frame> = fc
  .tuple(origin, direction, direction)
  .filter(([, a, b]) => Math.hypot(...cross(a, b)) > 0.1)
  .map(([at, a, b]) => ({ origin: at, x: a, y: unit(cross(cross(a, b), a)) }));

/** Anywhere, with one axis level and the next of its face upright. */
export const standing = (level: 'x' | 'y'): fc.Arbitrary<Frame> =>
  fc.tuple(origin, number(0, 2 * Math.PI)).map(([at, turn]) => {
    const along: Vec3 = [Math.cos(turn), Math.sin(turn), 0];
    return level === 'x' ? { origin: at, x: along, y: [0, 0, 1] } : { origin: at, x: [0, 0, 1], y: along };
  });
