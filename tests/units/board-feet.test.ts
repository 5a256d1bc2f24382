import { expect, expectTypeOf, test } from 'vitest';
import { boardFeet, boardFeetNominal } from '../../lib/units/board-feet.ts';
import { type Deg, degrees, type Mm, radians } from '../../lib/units/mm.ts';

test('a board foot is 12 in by 12 in by 1 in', () => {
  expect(boardFeet(304.8 * 304.8 * 25.4)).toBeCloseTo(1, 12);
  expect(boardFeet(0)).toBe(0);
});

test('lumber is sold by its nominal thickness, thin stock as 1 in', () => {
  expect(boardFeetNominal(50.8, 152.4, 2438.4)).toBeCloseTo(8, 12);
  expect(boardFeetNominal(19.05, 304.8, 304.8)).toBeCloseTo(1, 12);
});

test('degrees and radians undo each other', () => {
  expect(radians(180)).toBeCloseTo(Math.PI, 15);
  expect(degrees(radians(33))).toBeCloseTo(33, 12);
});

test('an angle does not pass for a length', () => {
  const angle: Deg = 90;
  // @ts-expect-error degrees are no millimeters
  const wrong: Mm = angle;
  const sum: Mm = 25.4 + wrong;
  expectTypeOf(sum).toExtend<number>();
  expect(sum).toBe(115.4);
});
