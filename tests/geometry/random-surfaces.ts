import fc from 'fast-check';
import type { Surface } from '../../lib/geometry/surface.ts';

const slope = fc.integer({ min: -300, max: 300 }).map((n) => n / 1000);

/** One to five planes, the highest or the lowest of them everywhere. */
export const surfaces: fc.Arbitrary<Surface> = fc
  .tuple(
    fc.constantFrom('highest' as const, 'lowest' as const),
    fc.array(fc.tuple(slope, slope, fc.integer({ min: 600, max: 800 })), { minLength: 1, maxLength: 5 }),
  )
  .map(([take, planes]) => ({ take, planes: planes.map(([a, b, c], i) => ({ name: `plane-${i}`, a, b, c })) }));

/** The height of a surface, found by asking every plane. */
export const bruteHeight = ({ take, planes }: Surface, x: number, y: number): number => {
  const heights = planes.map(({ a, b, c }) => a * x + b * y + c);
  return take === 'highest' ? Math.max(...heights) : Math.min(...heights);
};
