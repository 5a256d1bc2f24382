import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { corridorFor, longestThrough, spareAround } from '../../lib/derive/checks/corner-turn.ts';

const INCH = 25.4;
const even = (a: number) => ({ before: a, after: a });

/** The least over many angles of what fits between both outer walls and the inner corner. */
function sampled(before: number, after: number, width: number, count = 20_000): number {
  let least = Number.POSITIVE_INFINITY;
  for (let k = 1; k < count; k++) {
    const angle = (Math.PI / 2) * (k / count);
    const [s, c] = [Math.sin(angle), Math.cos(angle)];
    least = Math.min(least, (before * s + after * c - width) / (s * c));
  }
  return least;
}

/** Whether a rectangle turns, found by laying its corners against the outer walls and looking for the inner corner in it. */
function turnsByHand(before: number, after: number, length: number, width: number): boolean {
  for (let k = 0; k <= 4000; k++) {
    const angle = (Math.PI / 2) * (k / 4000);
    const [x, y] = [length * Math.cos(angle), length * Math.sin(angle)];
    // Distance of the inner corner from the line through (x, 0) and (0, y), and whether it lies beside the long side.
    const gap = (before * y + after * x - x * y) / length;
    const beside = ((before - x) * -x + after * y) / length;
    if (gap < width && beside > 0 && beside < length) return false;
  }
  return true;
}

describe('the longest thing that turns level', () => {
  it('is 92.8 in between 36 in corridors and 81.5 in between 32 in ones, 4 1/2 in thick; 84 in needs 32.9', () => {
    expect(longestThrough(even(36 * INCH), 4.5 * INCH) / INCH).toBeCloseTo(92.8, 1);
    expect(longestThrough(even(32 * INCH), 4.5 * INCH) / INCH).toBeCloseTo(81.5, 1);
    expect(corridorFor(84 * INCH, 4.5 * INCH) / INCH).toBeCloseTo(32.9, 1);
  });

  it('is 2√2 a - 2b between equal corridors', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 400, max: 4000, noNaN: true }),
        fc.double({ min: 0, max: 0.99, noNaN: true }),
        (a, share) => {
          const width = a * share;
          expect(longestThrough(even(a), width)).toBeCloseTo(2 * Math.SQRT2 * a - 2 * width, 6);
          expect(longestThrough(even(corridorFor(2 * a, width)), width)).toBeCloseTo(2 * a, 6);
        },
      ),
    );
  });

  it('is the known ladder for a thing without thickness', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 300, max: 5000, noNaN: true }),
        fc.double({ min: 300, max: 5000, noNaN: true }),
        (a, b) => {
          const ladder = (a ** (2 / 3) + b ** (2 / 3)) ** 1.5;
          expect(Math.abs(longestThrough({ before: a, after: b }, 0) / ladder - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('is the least over all angles between unlike corridors', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 600, max: 3000, noNaN: true }),
        fc.double({ min: 600, max: 3000, noNaN: true }),
        fc.double({ min: 0, max: 0.95, noNaN: true }),
        (a, b, share) => {
          const width = Math.min(a, b) * share;
          const exact = longestThrough({ before: a, after: b }, width);
          expect(exact).toBeLessThanOrEqual(sampled(a, b, width) + 1e-6);
          expect(sampled(a, b, width) / exact - 1).toBeLessThan(1e-5);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('agrees with a rectangle pushed around by hand', () => {
    for (const [a, b, width] of [
      [900, 900, 100],
      [1200, 800, 90],
      [1100, 700, 300],
    ] as const) {
      const longest = longestThrough({ before: a, after: b }, width);
      expect(turnsByHand(a, b, longest - 2, width)).toBe(true);
      expect(turnsByHand(a, b, longest + 2, width)).toBe(false);
    }
  });

  it('is nothing for what is wider than a corridor', () => {
    expect(longestThrough({ before: 900, after: 500 }, 500)).toBe(0);
  });
});

describe('room to spare around a corner', () => {
  it('counts being pushed on sideways', () => {
    expect(spareAround(even(1000), 950, 940)).toBeCloseTo(50, 9);
    expect(spareAround({ before: 700, after: 1200 }, 1000, 600)).toBeGreaterThanOrEqual(100);
  });

  it('says how much is missing when neither does', () => {
    expect(spareAround(even(800), 2400, 100)).toBeCloseTo(2 * Math.SQRT2 * 800 - 200 - 2400, 6);
    expect(spareAround(even(800), 2400, 900)).toBeLessThan(0);
  });
});
