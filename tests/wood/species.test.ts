import { describe, expect, expectTypeOf, test } from 'vitest';
import { cautions, missing, unconfirmed } from '../../lib/wood/confidence.ts';
import { FIELD_LABELS, SPECIES_FIELDS } from '../../lib/wood/field-labels.ts';
import { isSpeciesId, SPECIES_IDS, type SpeciesId } from '../../lib/wood/species-id.ts';
import { SPECIES, speciesById } from '../../lib/wood/species-list.ts';
import { row } from '../../lib/wood/species-row.ts';

describe('the list', () => {
  test('fifteen woods, sorted by id, each under its own id', () => {
    expect(SPECIES.map(({ id }) => id)).toEqual([...SPECIES_IDS]);
    expect([...SPECIES_IDS].sort()).toEqual([...SPECIES_IDS]);
    expect(SPECIES).toHaveLength(15);
    for (const id of SPECIES_IDS) expect(speciesById(id).id).toBe(id);
  });

  test('an id is one of the fifteen', () => {
    expectTypeOf<'cherry'>().toExtend<SpeciesId>();
    expectTypeOf<'pine'>().not.toExtend<SpeciesId>();
    expect(isSpeciesId('white-oak')).toBe(true);
    expect(isSpeciesId('pine')).toBe(false);
    expect(() => speciesById('pine' as SpeciesId)).toThrow(/^there is no wood "pine"; there are beech, cherry, /);
  });

  test('trade names differ', () => {
    expect(new Set(SPECIES.map(({ name }) => name)).size).toBe(15);
  });
});

describe('every value', () => {
  test('is a positive number with a source', () => {
    for (const wood of SPECIES) {
      for (const field of SPECIES_FIELDS) {
        const value = wood[field];
        if (value === undefined) continue;
        expect(value.value, `${wood.id} ${field}`).toBeGreaterThan(0);
        expect(value.source, `${wood.id} ${field}`).not.toBe('');
      }
    }
  });

  test('stands under a known name', () => {
    const others = ['id', 'name', 'scientificName', 'kind'];
    for (const wood of SPECIES) {
      expect(Object.keys(wood).filter((key) => !others.includes(key) && !(key in FIELD_LABELS))).toEqual([]);
    }
    // @ts-expect-error a misspelt name does not compile
    row('read', 'a table', { specficGravity: 0.5 });
  });

  test('across the rings wood shrinks less than along them, and both less than the volume', () => {
    for (const { id, shrinkageRadial, shrinkageTangential, shrinkageVolumetric } of SPECIES) {
      expect(shrinkageRadial.value, id).toBeLessThan(shrinkageTangential.value);
      expect(shrinkageTangential.value, id).toBeLessThan(shrinkageVolumetric!.value);
    }
  });

  test('green wood is weaker and lighter for its volume', () => {
    for (const wood of SPECIES) {
      expect(wood.morGreen!.value, wood.id).toBeLessThan(wood.mor!.value);
      expect(wood.moeGreen!.value, wood.id).toBeLessThan(wood.moe!.value);
      const dry = wood.specificGravity12?.value ?? 1;
      expect(wood.specificGravityGreen!.value, wood.id).toBeLessThan(dry);
    }
  });
});

describe('what is not certain is said', () => {
  test('values from memory', () => {
    const cherry = speciesById('cherry');
    expect(unconfirmed(cherry, ['mor', 'changeTangential', 'etOverEl', 'gltOverEl'])).toEqual([
      'etOverEl',
      'gltOverEl',
    ]);
    expect(unconfirmed(speciesById('beech'))).toEqual([]);
    expect(unconfirmed(speciesById('hickory'), ['changeRadial', 'changeTangential'])).toEqual(['changeRadial']);
    expect(unconfirmed(speciesById('red-maple'))).toContain('shrinkageTangential');
  });

  test('values that are not known', () => {
    expect(missing(speciesById('sugar-maple'), ['mor', 'tensionPerpendicular'])).toEqual(['tensionPerpendicular']);
    expect(missing(speciesById('mahogany'), ['changeTangential', 'density12', 'mor'])).toEqual([
      'changeTangential',
      'density12',
    ]);
    expect(missing(speciesById('white-oak'))).toEqual(['gltOverEl', 'grtOverEl']);
  });

  test('group values and doubtful figures carry a caution, once', () => {
    const oak = cautions(speciesById('red-oak'), ['changeRadial', 'changeTangential']);
    expect(oak).toHaveLength(1);
    expect(oak[0]).toMatch(/commercial red oak group.*0\.00304/);
    expect(cautions(speciesById('white-oak'), ['changeTangential'])[0]).toMatch(/commercial white oak group/);
    expect(cautions(speciesById('hickory'), ['changeTangential'])[0]).toMatch(/true hickory group/);
    expect(cautions(speciesById('white-ash'), ['mor'])[0]).toMatch(/15,000 psi/);
    expect(cautions(speciesById('cherry'))).toEqual([]);
  });
});
