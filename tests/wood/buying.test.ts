import { describe, expect, test } from 'vitest';
import { GRADES } from '../../lib/wood/grades.ts';
import { boardFeetFromSurface, squareFeet, surfaceMeasures } from '../../lib/wood/surface-measure.ts';
import { boardFeetToBuy, otherBasis } from '../../lib/wood/waste.ts';

const face = (inches: number, feet: number) => ({ width: inches * 25.4, length: feet * 304.8 });

describe('waste on two bases', () => {
  // Calculating Waste from Rough Lumber, WOODWEB: 100 net at 30 % loss needs 142.85.
  test('a yield of 70 % is not an add-on of 30 %', () => {
    expect(boardFeetToBuy(100, { basis: 'yield', percent: 70 })).toBeCloseTo(142.857, 3);
    expect(boardFeetToBuy(100, { basis: 'addOn', percent: 30 })).toBeCloseTo(130, 9);
  });

  // Computed: a top of 55.417 board feet net.
  test('55.4 board feet net are 79.2 at 70 % yield, 72.0 at 30 % add-on', () => {
    expect(boardFeetToBuy(55.417, { basis: 'yield', percent: 70 }).toFixed(1)).toBe('79.2');
    expect(boardFeetToBuy(55.417, { basis: 'addOn', percent: 30 }).toFixed(1)).toBe('72.0');
  });

  test('each basis in terms of the other', () => {
    const addOn = otherBasis({ basis: 'yield', percent: 70 });
    expect(addOn.basis).toBe('addOn');
    expect(addOn.percent).toBeCloseTo(42.857, 3);
    expect(otherBasis(addOn)).toEqual({ basis: 'yield', percent: expect.closeTo(70, 9) });
  });

  test('no loss, and what cannot be', () => {
    expect(boardFeetToBuy(10, { basis: 'yield', percent: 100 })).toBe(10);
    expect(boardFeetToBuy(10, { basis: 'addOn', percent: 0 })).toBe(10);
    expect(boardFeetToBuy(0, { basis: 'yield', percent: 70 })).toBe(0);
    expect(() => boardFeetToBuy(10, { basis: 'yield', percent: 0 })).toThrow(
      new RangeError('yield is 0 %; it must be 1 % to 100 %'),
    );
    expect(() => boardFeetToBuy(10, { basis: 'yield', percent: 120 })).toThrow('yield is 120 %');
    expect(() => boardFeetToBuy(10, { basis: 'addOn', percent: -5 })).toThrow('add-on is -5 %');
    expect(() => boardFeetToBuy(-1, { basis: 'addOn', percent: 5 })).toThrow('net quantity is -1 board feet');
  });
});

describe('grades', () => {
  // Chart of lumber grades after the NHLA rules.
  test.each([
    ['fas', 83.3333, 6, 8],
    ['1-common', 66.6667, 3, 4],
    ['2-common', 50, 3, 4],
    ['3a-common', 33.3333, 3, 4],
    ['3b-common', 25, 3, 4],
  ])('%s: %f %% clear, boards from %f in by %f ft', (id, percent, width, length) => {
    const grade = GRADES.find((candidate) => candidate.id === id)!;
    expect(grade.clearPercent!.value).toBeCloseTo(percent, 4);
    expect(squareFeet(grade.leastBoard.value)).toBeCloseTo((width * length) / 12, 9);
    expect(grade.leastBoard.value.width).toBeCloseTo(width * 25.4, 9);
  });

  test('better grades give more clear wood and ask for less on top', () => {
    const clear = GRADES.flatMap(({ clearPercent }) => clearPercent?.value ?? []);
    expect([...clear].sort((a, b) => b - a)).toEqual(clear);
    const addOn = (id: string) => GRADES.find((grade) => grade.id === id)!.addOnPercent!.value;
    expect(addOn('selects')).toEqual({ low: 20, high: 20 });
    expect(addOn('fas')).toEqual({ low: 25, high: 30 });
    expect(addOn('1-common')).toEqual({ low: 50, high: 50 });
  });

  test('FAS takes 4 in by 5 ft or 3 in by 7 ft', () => {
    const [broad, narrow] = GRADES[0]!.leastCuttings!.value;
    expect(broad).toEqual({ width: expect.closeTo(101.6, 9), length: expect.closeTo(1524, 9) });
    expect(narrow).toEqual({ width: expect.closeTo(76.2, 9), length: expect.closeTo(2133.6, 9) });
  });
});

describe('surface measure', () => {
  // American Hardwood Export Council, Grading and measurement; Hardwood measurement pages.
  test.each([
    [6.25, 8, 4.1667, 4],
    [6.5, 8, 4.3333, 4],
    [8, 12, 8, 8],
    [10, 13, 10.8333, 11],
  ])('%f in by %f ft: %f, so %i', (inches, feet, exact, measure) => {
    expect(squareFeet(face(inches, feet))).toBeCloseTo(exact, 4);
    expect(surfaceMeasures([face(inches, feet)])).toEqual([measure]);
  });

  test('6 1/4 in by 8 ft by 2 in is 8 board feet; under an inch pays as an inch', () => {
    expect(boardFeetFromSurface(4, 50.8)).toBe(8);
    expect(boardFeetFromSurface(4, 19.05)).toBe(4);
  });

  test('exact halves go up, down, up; others do not take part', () => {
    const half = face(6.75, 8);
    expect(squareFeet(half)).toBeCloseTo(4.5, 12);
    expect(surfaceMeasures([half, half, half])).toEqual([5, 4, 5]);
    expect(surfaceMeasures([half, face(10, 13), face(6.25, 8), half])).toEqual([5, 11, 4, 4]);
    expect(surfaceMeasures([half])).toEqual([5]);
  });

  test('a half is seen through the noise of millimetres', () => {
    const halves = Array.from({ length: 40 }, (_, n) => face(0.75 + 1.5 * (n + 1), 8));
    expect(halves.some((half) => squareFeet(half) % 1 !== 0.5)).toBe(true);
    expect(surfaceMeasures(halves)).toEqual(halves.map((_, n) => (n % 2 === 0 ? n + 2 : n + 1)));
  });

  test('a face without width is refused', () => {
    expect(() => squareFeet({ width: 0, length: 100 })).toThrow('width is 0 mm');
  });
});
