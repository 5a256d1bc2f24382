import { SPECIES_FIELDS } from './field-labels.ts';
import type { Species, SpeciesField } from './species.ts';

/** Those of the asked values that are from memory: a verdict on them rests on wood data still to be confirmed. */
export function unconfirmed(species: Species, fields: readonly SpeciesField[] = SPECIES_FIELDS): SpeciesField[] {
  return fields.filter((field) => species[field]?.status === 'memory');
}

/** Those of the asked values that are not known: a check that needs one of them is not made. */
export function missing(species: Species, fields: readonly SpeciesField[] = SPECIES_FIELDS): SpeciesField[] {
  return fields.filter((field) => species[field] === undefined);
}

/** The cautions on the asked values, each once, in the order asked. */
export function cautions(species: Species, fields: readonly SpeciesField[] = SPECIES_FIELDS): string[] {
  const all = fields.flatMap((field) => species[field]?.caution ?? []);
  return [...new Set(all)];
}
