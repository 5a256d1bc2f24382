import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classFor, spare } from '../../lib/wood/class-for.ts';
import { THICKNESS_CLASSES, type ThicknessClassId } from '../../lib/wood/thickness-classes.ts';

const INCH = 25.4;
const byId = (id: ThicknessClassId) => THICKNESS_CLASSES.find((candidate) => candidate.id === id)!;

// Hardwood lumber dimensions, Engineering ToolBox, surfaced two sides; 10/4 is common practice without a source.
test.each([
  ['4/4', 0.8125, 20.64, 'read'],
  ['5/4', 1.0625, 26.99, 'read'],
  ['6/4', 1.3125, 33.34, 'read'],
  ['7/4', 1.5, 38.1, 'read'],
  ['8/4', 1.75, 44.45, 'read'],
  ['10/4', 2.25, 57.15, 'memory'],
  ['12/4', 2.75, 69.85, 'read'],
  ['16/4', 3.75, 95.25, 'read'],
] as const)('%s dresses to %f in, %f mm', (id, inches, mm, status) => {
  const { nominal, dressed } = byId(id);
  expect(dressed.value).toBeCloseTo(inches * INCH, 10);
  expect(dressed.value).toBeCloseTo(mm, 2);
  expect(dressed.status).toBe(status);
  expect(nominal).toBeCloseTo((Number.parseInt(id, 10) / 4) * INCH, 10);
});

test('eight classes, each dressed thinner than it is paid for', () => {
  expect(THICKNESS_CLASSES).toHaveLength(8);
  for (const { id, nominal, dressed } of THICKNESS_CLASSES) expect(dressed.value, id).toBeLessThan(nominal);
});

describe('the thinnest class that reaches', () => {
  // A top 2 1/4 in thick on the centre line, 1 1/8 in at the long edge 20 in off, 1/16 in of clean-up.
  const needed = (x: number) => (2.25 - (1.125 / 20) * x + 0.0625) * INCH;

  test.each([
    [0, '12/4'],
    [1.1, '12/4'],
    [1.112, '10/4'],
    [5, '10/4'],
    [9.99, '10/4'],
    [10, '8/4'],
    [14.5, '7/4'],
    [17.7, '7/4'],
    [17.78, '6/4'],
    [20, '6/4'],
  ] as const)('%f in off the centre line: %s', (x, id) => {
    expect(classFor(needed(x))?.id).toBe(id);
  });

  test('an exact fit counts and leaves nothing, whatever the arithmetic', () => {
    expect(spare(byId('8/4'), needed(10))).toBe(0);
    expect(spare(byId('8/4'), 44.45 + 1e-7)).toBe(0);
    expect(classFor(44.45 + 1e-7)?.id).toBe('8/4');
    expect(classFor(44.45 + 1e-5)?.id).toBe('10/4');
  });

  test('none reaches past the thickest', () => {
    expect(classFor(95.25)?.id).toBe('16/4');
    expect(classFor(95.26)).toBeUndefined();
    expect(classFor(20, [])).toBeUndefined();
  });

  test('without 10/4 the next is 12/4; the order of the list does not matter', () => {
    const rest = THICKNESS_CLASSES.filter(({ id }) => id !== '10/4');
    expect(classFor(needed(9), rest)?.id).toBe('12/4');
    expect(classFor(needed(9), [...rest].reverse())?.id).toBe('12/4');
  });

  test('it reaches, and the next thinner one does not', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 95, noNaN: true }), (thickness) => {
        const found = classFor(thickness)!;
        expect(spare(found, thickness)).toBeGreaterThanOrEqual(0);
        const thinner = THICKNESS_CLASSES[THICKNESS_CLASSES.indexOf(found) - 1];
        if (thinner) expect(spare(thinner, thickness)).toBeLessThan(0);
      }),
      { seed: 1 },
    );
  });

  test('no thickness, no class', () => {
    expect(() => classFor(0)).toThrow(new RangeError('needed thickness is 0 mm; it must be above 0 mm'));
    expect(() => classFor(Number.NaN)).toThrow('needed thickness is NaN mm');
  });
});
