import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clampsByCover, clampsByForce } from '../../lib/derive/checks/solvers/clamps.ts';
import { jointContact, kernWindow } from '../../lib/derive/checks/solvers/kern-rule.ts';

const RUN = { seed: 7_340, numRuns: 300 };
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the kern rule', () => {
  test('keeps every joint closed within its window, and opens one outside', () => {
    fc.assert(
      fc.property(fc.array(mm(15, 80), { minLength: 1, maxLength: 7 }), mm(0, 1), (depths, where) => {
        const { low, high, possible } = kernWindow(depths);
        expect(possible).toBe(low <= high);
        if (possible) {
          const y = low + (high - low) * where;
          for (const d of depths) expect(jointContact(d, y).open).toBeLessThan(1e-9);
        }
        const outside = [low * 0.98, high * 1.02].map((y) => Math.max(...depths.map((d) => jointContact(d, y).open)));
        for (const open of outside) expect(open).toBeGreaterThan(0);
      }),
      RUN,
    );
  });

  test('balances: the pressure has the clamp force, and its middle on the clamp line', () => {
    fc.assert(
      fc.property(mm(15, 80), mm(0.02, 0.98), (d, part) => {
        const y = d * part;
        const { contact, open, peak } = jointContact(d, y);
        expect(contact + open).toBeCloseTo(d, 9);
        // A triangle, or a trapezoid over the whole depth, with unit mean over d.
        const least = open > 0 ? 0 : 2 - peak;
        expect(((peak + least) / 2) * contact).toBeCloseTo(d, 6);
        const fromNear = (contact * (peak + 2 * least)) / (3 * (peak + least));
        expect(fromNear).toBeCloseTo(Math.min(y, d - y), 6);
      }),
      RUN,
    );
  });

  test('beyond an arris nothing bears', () => {
    expect(jointContact(40, 0)).toEqual({ contact: 0, open: 40, peak: Infinity });
    expect(jointContact(40, 45).contact).toBe(0);
  });

  test('is impossible when one joint is more than twice another', () => {
    expect(kernWindow([20, 40]).possible).toBe(true);
    expect(kernWindow([20, 40.1]).possible).toBe(false);
  });
});

describe('clamps', () => {
  test('are whole, and one more only when needed', () => {
    const joint = { pressure: 1, length: 1000, depth: 40, clampForce: 5000 };
    expect(clampsByForce(joint).clamps).toBe(8);
    expect(clampsByForce({ ...joint, length: 1001 }).clamps).toBe(9);
    expect(clampsByForce({ pressure: 0.1, length: 3, depth: 1, clampForce: 0.1 }).clamps).toBe(3);
    expect(clampsByCover({ length: 600, stave: 100, caul: 50 })).toEqual({ spacing: 300, clamps: 3 });
    expect(clampsByCover({ length: 610, stave: 100, caul: 50 }).clamps).toBe(4);
  });

  test('never fewer for a longer joint or a weaker clamp', () => {
    fc.assert(
      fc.property(
        mm(0.3, 2),
        mm(100, 3000),
        mm(10, 80),
        mm(500, 9000),
        mm(1, 3),
        (pressure, length, depth, clampForce, f) => {
          const { clamps } = clampsByForce({ pressure, length, depth, clampForce });
          expect(clampsByForce({ pressure, length: length * f, depth, clampForce }).clamps).toBeGreaterThanOrEqual(
            clamps,
          );
          expect(clampsByForce({ pressure, length, depth, clampForce: clampForce / f }).clamps).toBeGreaterThanOrEqual(
            clamps,
          );
        },
      ),
      RUN,
    );
  });
});
