import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { farUplift, liftScrews } from '../../lib/derive/checks/solvers/lift-off.ts';
import { SLOT_PLAY, screwTravel, slotFor, slotSlack } from '../../lib/derive/checks/solvers/slot.ts';
import { threadRoom } from '../../lib/derive/checks/solvers/thread-room.ts';
import { screwHold } from '../../lib/derive/checks/solvers/withdrawal.ts';

const RUN = { seed: 7_320, numRuns: 300 };
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const travels = fc.record({
  distance: mm(0, 600),
  perPercent: mm(0.001, 0.005),
  moisture: fc.tuple(mm(3, 8), mm(0, 5), mm(0, 5)).map(([low, a, b]) => ({ low, fitting: low + a, high: low + a + b })),
});

describe('slots', () => {
  test('as computed leave half the play at both ends', () => {
    fc.assert(
      fc.property(travels, mm(3, 8), (t, shank) => {
        const travel = screwTravel(t);
        expect(slotSlack(slotFor(shank, travel), shank, travel)).toBeCloseTo(SLOT_PLAY.value / 2, 9);
      }),
      RUN,
    );
  });

  test('are never worse when longer, never better further from the fixed point or in wilder air', () => {
    fc.assert(
      fc.property(travels, mm(3, 8), mm(0, 20), mm(-5, 5), mm(1, 2), (t, shank, longer, offset, f) => {
        const travel = screwTravel(t);
        const slot = { length: shank + 5, offset };
        const slack = slotSlack(slot, shank, travel);
        expect(slotSlack({ ...slot, length: slot.length + longer }, shank, travel)).toBeGreaterThanOrEqual(slack);
        expect(slotSlack(slot, shank, screwTravel({ ...t, distance: t.distance * f }))).toBeLessThanOrEqual(slack);
        const wilder = { ...t.moisture, low: t.moisture.low / f, high: t.moisture.high * f };
        expect(slotSlack(slot, shank, screwTravel({ ...t, moisture: wilder }))).toBeLessThanOrEqual(slack);
      }),
      RUN,
    );
  });

  test('round holes stop the screw', () => {
    const travel = screwTravel({ distance: 330.2, perPercent: 0.00248, moisture: { fitting: 7.5, low: 5, high: 11 } });
    expect(slotSlack({ length: 5.2, offset: 0 }, 4.83, travel)).toBeLessThan(-2.6);
  });

  test('moisture at fixing outside the range is refused', () => {
    expect(() => screwTravel({ distance: 1, perPercent: 0.002, moisture: { fitting: 12, low: 5, high: 11 } })).toThrow(
      'moisture at fixing is 12 %; it must be 5 % to 11 %',
    );
  });
});

describe('threads', () => {
  test('under four diameters are short; none at all is 0 or less', () => {
    const { thread, short } = threadRoom({ thickness: 28.575, bracket: 0, shank: 4.83 });
    expect(thread).toBeCloseTo(19.05, 9);
    expect(short).toBe(true);
    expect(threadRoom({ thickness: 28.525, bracket: 0, shank: 4.75 }).short).toBe(false);
    expect(threadRoom({ thickness: 28.575, bracket: 0, shank: 4.17 }).short).toBe(false);
    expect(threadRoom({ thickness: 12, bracket: 4, shank: 4.17 }).thread).toBeLessThan(0);
    expect(threadRoom({ thickness: 40, bracket: 0, shank: 4.83, cover: 12 }).thread).toBe(28);
  });

  test('hold less than they break at, in step with length, diameter and the square of the gravity', () => {
    const screw = { specificGravity12: 0.5, shank: 4.83, thread: 25 };
    const hold = screwHold(screw);
    expect(hold.allowable / hold.ultimate).toBeCloseTo(19.65 / 108.25, 9);
    expect(screwHold({ ...screw, thread: 50 }).allowable / hold.allowable).toBeCloseTo(2, 12);
    expect(screwHold({ ...screw, specificGravity12: 1 }).allowable / hold.allowable).toBeCloseTo(4, 12);
  });
});

describe('lifting a table by its top', () => {
  test('asks four screws a frame, or more when the load asks for them', () => {
    expect(liftScrews({ baseWeight: 202.78, allowable: 593, frames: 2 })).toMatchObject({ byLoad: 1, screws: 8 });
    expect(liftScrews({ baseWeight: 3000, allowable: 600, frames: 2 })).toMatchObject({ byLoad: 10, screws: 10 });
  });

  test('a load in the middle of the span does not lift the far side', () => {
    expect(farUplift(1079, 0, 1422.4, 255)).toBe(-255);
  });
});
