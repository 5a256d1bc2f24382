import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Poly, Pt } from '../../lib/drawing/entity.ts';
import { hatch } from '../../lib/drawing/hatch.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';

const square = (x: number, y: number, size: number): Pt[] => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
];

const lengthOf = ({ points: [a, b] }: Poly): number => Math.hypot(b![0] - a![0], b![1] - a![1]);

test('the lines of a hatch, times their spacing, cover the area: holes stay free', () => {
  const area = 100 * 100 - 40 * 40;
  for (const angle of [0, 30, 45, 90, 135, 160]) {
    const lines = hatch([square(3, 7, 100), square(20, 30, 40)], DEFAULT_STYLE, { angle, spacing: 0.1 });
    const covered = lines.reduce((sum, line) => sum + lengthOf(line), 0) * 0.1;
    expect(covered / area).toBeCloseTo(1, 2);
  }
});

test('spacing is paper mm, and lines of one angle lie on one raster', () => {
  const style = { ...DEFAULT_STYLE, scale: 10 };
  const lines = hatch([square(0, 0, 100)], style, { angle: 90, spacing: 2.5 });
  expect(lines.map(({ points: [a] }) => Math.round(-a![0]) + 0)).toEqual([-75, -50, -25]);
});

test('every line lies within the outline, whatever it is', () => {
  const corner = fc.tuple(fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: -50, max: 50, noNaN: true }));
  fc.assert(
    fc.property(fc.array(corner, { minLength: 3, maxLength: 8 }), fc.integer({ min: 0, max: 179 }), (loop, angle) => {
      for (const { points } of hatch([loop], DEFAULT_STYLE, { angle, spacing: 3 })) {
        const [a, b] = points as readonly [Pt, Pt];
        expect(isInside([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], loop)).toBe(true);
      }
    }),
    { seed: 12, numRuns: 200 },
  );
});

/** By the sides that a level ray crosses. */
function isInside([x, y]: Pt, loop: readonly Pt[]): boolean {
  let crossings = 0;
  loop.forEach((a, k) => {
    const b = loop[(k + 1) % loop.length]!;
    if (a[1] > y === b[1] > y) return;
    if (a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]) > x) crossings++;
  });
  return crossings % 2 === 1;
}
