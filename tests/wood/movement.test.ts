import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { movement } from '../../lib/wood/movement.ts';
import { changeByCoefficient, changeByShrinkage } from '../../lib/wood/movement-equations.ts';
import { acrossGrain } from '../../lib/wood/ring-angle.ts';
import { SPECIES_IDS } from '../../lib/wood/species-id.ts';
import { speciesById } from '../../lib/wood/species-list.ts';

const INCH = 25.4;

describe('Eq 13-2', () => {
  test('white fir, FPL-GTR-190 p. 13-17: 232 mm from 8 to 11 % moves 1.7 mm, 0.067 in, to 233.7 mm', () => {
    const change = changeByCoefficient(232, 0.00245, 8, 11);
    expect(change).toBeCloseTo(1.7052, 4);
    expect(change.toFixed(1)).toBe('1.7');
    expect((change / INCH).toFixed(3)).toBe('0.067');
    expect((232 + change).toFixed(1)).toBe('233.7');
  });

  test('mesquite, dimensional change chart: 5 in from 6 to 9 % moves 0.019 in', () => {
    expect(changeByCoefficient(5 * INCH, 0.00129, 6, 9) / INCH).toBeCloseTo(0.01935, 8);
  });

  // Computed from the equation and table 13-5.
  test.each([
    ['walnut', 914.4, 'flat', 7, 10, 7.5164],
    ['white-ash', 1000, 'flat', 6, 11, 13.7],
    ['sugar-maple', 600, 'quarter', 7, 13, 5.94],
  ] as const)('%s %f mm %s-sawn, %f to %f %%: %f mm', (id, dimension, sawn, from, to, change) => {
    const result = movement(speciesById(id), { dimension, sawn, from, to });
    expect(result.equation).toBe('Eq 13-2');
    expect(result.change).toBeCloseTo(change, 4);
  });

  // A 40 in top over 4 points of moisture, in inches: computed from table 13-5.
  test.each([
    ['cherry', 'flat', '0.397'],
    ['cherry', 'quarter', '0.202'],
    ['walnut', 'flat', '0.438'],
    ['white-ash', 'flat', '0.438'],
    ['sugar-maple', 'flat', '0.565'],
    ['white-oak', 'flat', '0.584'],
    ['red-oak', 'flat', '0.590'],
  ] as const)('a 40 in top of %s, %s-sawn, moves %s in', (id, sawn, inches) => {
    const { change } = movement(speciesById(id), { dimension: 40 * INCH, sawn, from: 6, to: 10 });
    expect((change / INCH).toFixed(3)).toBe(inches);
  });

  test('holds from 6 to 14 % only', () => {
    expect(() => changeByCoefficient(100, 0.002, 5.9, 10)).toThrow(
      new RangeError('moisture before, for Eq 13-2, is 5.9 %; it must be 6 % to 14 %'),
    );
    expect(() => changeByCoefficient(100, 0.002, 8, 14.1)).toThrow('moisture after, for Eq 13-2, is 14.1 %');
    expect(() => changeByCoefficient(0, 0.002, 8, 10)).toThrow('dimension is 0 mm; it must be above 0 mm');
  });
});

describe('Eq 13-3', () => {
  // Computed from the equation.
  test('red oak, S 8.6, 300 mm, 12 to 6 %: -5.4407 mm', () => {
    expect(changeByShrinkage(300, 8.6, 12, 6)).toBeCloseTo(-5.4407, 4);
  });

  test('white ash, S 7.8, 1000 mm, 8 to 18 %: 27.5774 mm; 6 to 11 %: 13.8652 mm', () => {
    expect(changeByShrinkage(1000, 7.8, 8, 18)).toBeCloseTo(27.5774, 4);
    expect(changeByShrinkage(1000, 7.8, 6, 11)).toBeCloseTo(13.8652, 4);
  });

  test('cherry, 40 in, 6 to 10 %: 0.4015 in, where Eq 13-2 gives 0.3968', () => {
    expect(changeByShrinkage(40, 7.1, 6, 10)).toBeCloseTo(0.4015, 4);
    expect(changeByCoefficient(40, 0.00248, 6, 10)).toBeCloseTo(0.3968, 4);
  });

  test('green to ovendry is the shrinkage itself', () => {
    for (const shrinkage of [2.5, 7.1, 11.9])
      expect(changeByShrinkage(100, shrinkage, 30, 0)).toBeCloseTo(-shrinkage, 9);
  });

  test('there and back is nothing', () => {
    const moisture = fc.double({ min: 0, max: 30, noNaN: true });
    const shrinkage = fc.double({ min: 1, max: 15, noNaN: true });
    fc.assert(
      fc.property(moisture, moisture, shrinkage, (a, b, s) => {
        const there = 500 + changeByShrinkage(500, s, a, b);
        expect(there + changeByShrinkage(there, s, b, a)).toBeCloseTo(500, 8);
      }),
      { seed: 1 },
    );
  });

  test('holds up to fiber saturation', () => {
    expect(() => changeByShrinkage(100, 7, 8, 31)).toThrow(
      new RangeError('moisture after, for Eq 13-3, is 31 %; it must be 0 % to 30 %'),
    );
    expect(() => changeByShrinkage(100, 0, 8, 9)).toThrow('shrinkage is 0 %');
  });
});

describe('which equation', () => {
  const cherry = speciesById('cherry');

  test('Eq 13-3 as soon as either moisture leaves 6 to 14 %', () => {
    const equation = (from: number, to: number) =>
      movement(cherry, { dimension: 100, sawn: 'flat', from, to }).equation;
    expect(equation(6, 14)).toBe('Eq 13-2');
    expect(equation(14, 6)).toBe('Eq 13-2');
    expect(equation(5, 8)).toBe('Eq 13-3');
    expect(equation(8, 5)).toBe('Eq 13-3');
    expect(equation(8, 15)).toBe('Eq 13-3');
  });

  test('Eq 13-3 for a wood without coefficients', () => {
    const result = movement(speciesById('mahogany'), { dimension: 100, sawn: 'quarter', from: 8, to: 10 });
    expect(result).toEqual({
      change: changeByShrinkage(100, 3, 8, 10),
      equation: 'Eq 13-3',
      basis: ['shrinkageRadial'],
    });
  });

  test('it names the values it rests on', () => {
    const basis = (sawn: Parameters<typeof movement>[1]['sawn'], to: number) =>
      movement(cherry, { dimension: 100, sawn, from: 8, to }).basis;
    expect(basis('flat', 10)).toEqual(['changeTangential']);
    expect(basis({ ringAngle: 90 }, 10)).toEqual(['changeRadial']);
    expect(basis({ ringAngle: 30 }, 20)).toEqual(['shrinkageRadial', 'shrinkageTangential']);
  });

  test('the two nearly agree from 10 % on, where the coefficients are of the wood itself', () => {
    for (const id of SPECIES_IDS) {
      const wood = speciesById(id);
      if (!wood.changeTangential || wood.changeTangential.caution) continue;
      const inside = changeByCoefficient(100, wood.changeTangential.value, 10, 13);
      expect(inside / changeByShrinkage(100, wood.shrinkageTangential.value, 10, 13), id).toBeCloseTo(1, 2);
    }
  });

  test('out of both ranges it refuses', () => {
    expect(() => movement(cherry, { dimension: 100, sawn: 'flat', from: 8, to: 40 })).toThrow('is 40 %');
  });
});

describe('ring angle', () => {
  test('0° is flat-sawn, 90° quarter-sawn, 45° half way', () => {
    expect(acrossGrain(1, 3, { ringAngle: 0 })).toBe(acrossGrain(1, 3, 'flat'));
    expect(acrossGrain(1, 3, { ringAngle: 90 })).toBe(acrossGrain(1, 3, 'quarter'));
    expect(acrossGrain(1, 3, { ringAngle: 45 })).toBeCloseTo(2, 12);
    expect(acrossGrain(1, 3, { ringAngle: 30 })).toBeCloseTo(2.5, 12);
  });

  test('steeper rings, less movement', () => {
    const angle = fc.double({ min: 0, max: 90, noNaN: true });
    const at = (ringAngle: number) =>
      movement(speciesById('beech'), { dimension: 200, sawn: { ringAngle }, from: 7, to: 11 }).change;
    fc.assert(
      fc.property(angle, angle, (a, b) => {
        expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)));
      }),
      { seed: 1 },
    );
  });

  test('beyond 90° it refuses', () => {
    expect(() => acrossGrain(1, 3, { ringAngle: 91 })).toThrow(
      new RangeError('ring angle is 91°; it must be 0° to 90°'),
    );
  });
});
