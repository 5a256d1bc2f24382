/** The woods, by the name that a maker types. */
export const SPECIES_IDS = [
  'beech',
  'cherry',
  'douglas-fir',
  'elm',
  'hickory',
  'mahogany',
  'red-maple',
  'red-oak',
  'sugar-maple',
  'teak',
  'walnut',
  'white-ash',
  'white-oak',
  'yellow-birch',
  'yellow-poplar',
] as const;

export type SpeciesId = (typeof SPECIES_IDS)[number];

/** Whether a text names one of the woods. */
export const isSpeciesId = (text: string): text is SpeciesId => (SPECIES_IDS as readonly string[]).includes(text);
