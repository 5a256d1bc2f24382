import { describe, expect, test } from 'vitest';
import { coefficientFromShrinkage } from '../../lib/wood/movement-equations.ts';
import type { SpeciesField } from '../../lib/wood/species.ts';
import { SPECIES_IDS, type SpeciesId } from '../../lib/wood/species-id.ts';
import { SPECIES, speciesById } from '../../lib/wood/species-list.ts';
import { ELASTIC_PRINTED, type Figure, MOVEMENT_PRINTED, POISSON_REMEMBERED } from './printed-figures.ts';
import { TABLE_5_3A_PRINTED } from './table-5-3a.ts';
import { type InchPound, TABLE_5_3B_PRINTED } from './table-5-3b.ts';

/** MPa in one psi, N in one lbf: exact definitions of pound, inch and standard gravity. */
const LBF = 0.45359237 * 9.80665;
const PSI = LBF / 25.4 ** 2;
const TO_SI: { readonly [K in keyof InchPound]: number } = {
  mor: PSI,
  moe: PSI * 1e6,
  compressionParallel: PSI,
  compressionPerpendicular: PSI,
  shear: PSI,
  tensionPerpendicular: PSI,
  hardness: LBF,
};

describe('the tables of shrinkage, change and elastic ratios', () => {
  const MOVEMENT = [
    'shrinkageRadial',
    'shrinkageTangential',
    'shrinkageVolumetric',
    'changeRadial',
    'changeTangential',
    'specificGravityGreen',
    'specificGravity12',
  ] as const;
  const ELASTIC = ['etOverEl', 'erOverEl', 'glrOverEl', 'gltOverEl'] as const;

  const POISSON = ['poissonLR', 'poissonLT', 'poissonRT', 'poissonTR', 'poissonRL', 'poissonTL'] as const;

  function figure(id: SpeciesId, field: SpeciesField): Figure {
    const value = speciesById(id)[field];
    if (value === undefined) return null;
    return value.status === 'memory' ? `${value.value}?` : value.value;
  }

  test.each(SPECIES_IDS)('%s: figures and what of them is remembered', (id) => {
    expect(MOVEMENT.map((field) => figure(id, field))).toEqual(MOVEMENT_PRINTED[id]);
    expect(ELASTIC.map((field) => figure(id, field))).toEqual(ELASTIC_PRINTED[id] ?? ELASTIC.map(() => null));
    const remembered = POISSON_REMEMBERED[id]?.map((value) => `${value}?`);
    expect(POISSON.map((field) => figure(id, field))).toEqual(remembered ?? POISSON.map(() => null));
  });
});

describe('FPL-GTR-282 tables 5-3b and 5-5b, inch-pound printing', () => {
  test.each(SPECIES_IDS)('%s: each value is the printed one, to four digits', (id) => {
    for (const [field, factor] of Object.entries(TO_SI) as [keyof InchPound, number][]) {
      const printed = TABLE_5_3B_PRINTED[id][field];
      const expected = printed === null ? undefined : Number((printed * factor).toPrecision(4));
      expect(speciesById(id)[field]?.value, `${id} ${field}`).toBe(expected);
    }
  });
});

describe('FPL-GTR-282 table 5-3a, metric printing', () => {
  const DRY = ['compressionParallel', 'compressionPerpendicular', 'shear', 'tensionPerpendicular', 'hardness'] as const;
  const NOISE = 1e-9;

  function within(id: SpeciesId, field: SpeciesField, printed: number, step: number) {
    const value = speciesById(id)[field]!.value;
    expect(Math.abs(value - printed), `${id} ${field} ${value} for ${printed}`).toBeLessThanOrEqual(step / 2 + NOISE);
  }

  test.each(Object.keys(TABLE_5_3A_PRINTED) as SpeciesId[])('%s agrees to half of the last printed digit', (id) => {
    const metric = TABLE_5_3A_PRINTED[id]!;
    expect(speciesById(id).specificGravityGreen!.value).toBe(metric.specificGravity[0]);
    expect(speciesById(id).specificGravity12!.value).toBe(metric.specificGravity[1]);
    within(id, 'morGreen', metric.mor[0] / 1000, 1);
    within(id, 'mor', metric.mor[1] / 1000, 1);
    within(id, 'moeGreen', metric.moe[0], 100);
    within(id, 'moe', metric.moe[1], 100);
    for (const [i, field] of DRY.entries()) {
      const printed = metric.dry[i]!;
      if (printed === null) expect(speciesById(id)[field]).toBeUndefined();
      else if (field === 'hardness') within(id, field, printed, 100);
      else within(id, field, printed / 1000, 0.1);
    }
  });
});

// Density at 12 %: 1,120 times the specific gravity, FPL-GTR-282 Eq 4-14. Whole figures as a shop would write them.
test.each([
  ['white-ash', 672],
  ['beech', 717],
  ['yellow-birch', 694],
  ['cherry', 560],
  ['elm', 560],
  ['hickory', 806],
  ['red-maple', 605],
  ['sugar-maple', 706],
  ['red-oak', 706],
  ['white-oak', 762],
  ['walnut', 616],
  ['yellow-poplar', 470],
  ['douglas-fir', 538],
] as const)('%s weighs %i kg/m³ at 12 %%', (id, density) => {
  const wood = speciesById(id);
  expect(Math.round(wood.density12!.value)).toBe(density);
  expect(wood.density12!.value).toBeCloseTo(1120 * wood.specificGravity12!.value, 9);
  expect(wood.density12!.status).toBe('computed');
});

describe('C = S / (3000 - 20 S), which ties table 13-5 to table 4-3', () => {
  /** Group values, and teak, whose chart figure does not fit its remembered shrinkage. */
  const APART: readonly SpeciesId[] = ['red-oak', 'white-oak', 'hickory', 'teak'];

  test('holds to the printed digits for the others that have coefficients', () => {
    const tied = SPECIES.filter(({ id, changeTangential }) => changeTangential && !APART.includes(id));
    expect(tied).toHaveLength(10);
    for (const wood of tied) {
      expect(coefficientFromShrinkage(wood.shrinkageRadial.value), wood.id).toBeCloseTo(wood.changeRadial!.value, 5);
      const tangential = coefficientFromShrinkage(wood.shrinkageTangential.value);
      expect(tangential, wood.id).toBeCloseTo(wood.changeTangential!.value, 5);
    }
  });

  test('does not hold for those four, and each of them carries a caution', () => {
    for (const id of APART) {
      const wood = speciesById(id);
      const tied = coefficientFromShrinkage(wood.shrinkageTangential.value);
      expect(Math.abs(tied - wood.changeTangential!.value), id).toBeGreaterThan(5e-5);
      expect(wood.changeTangential!.caution, id).toBeDefined();
    }
  });
});

// Page text of FPL-GTR-282 table 5-5b, green: teak 11,600 psi and 1.37 million psi.
test('teak, green', () => {
  expect(speciesById('teak').morGreen!.value).toBeCloseTo(11600 * PSI, 2);
  expect(speciesById('teak').moeGreen!.value).toBeCloseTo(1.37e6 * PSI, -1);
});

// Elastic symmetry: the ratio one way times the modulus the other way. Measured figures miss it by a little.
test.each(SPECIES_IDS.filter((id) => speciesById(id).poissonLR))('%s: Poisson’s ratios fit the moduli', (id) => {
  const value = (field: SpeciesField) => speciesById(id)[field]!.value;
  const [t, r] = [value('etOverEl'), value('erOverEl')];
  expect(Math.abs(value('poissonRL') - value('poissonLR') * r)).toBeLessThan(0.02);
  expect(Math.abs(value('poissonTL') - value('poissonLT') * t)).toBeLessThan(0.02);
  expect(Math.abs(value('poissonTR') - (value('poissonRT') * t) / r)).toBeLessThan(0.1);
});
