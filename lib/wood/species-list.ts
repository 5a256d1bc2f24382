import { beech } from './species/beech.ts';
import { cherry } from './species/cherry.ts';
import { douglasFir } from './species/douglas-fir.ts';
import { elm } from './species/elm.ts';
import { hickory } from './species/hickory.ts';
import { mahogany } from './species/mahogany.ts';
import { redMaple } from './species/red-maple.ts';
import { redOak } from './species/red-oak.ts';
import { sugarMaple } from './species/sugar-maple.ts';
import { teak } from './species/teak.ts';
import { walnut } from './species/walnut.ts';
import { whiteAsh } from './species/white-ash.ts';
import { whiteOak } from './species/white-oak.ts';
import { yellowBirch } from './species/yellow-birch.ts';
import { yellowPoplar } from './species/yellow-poplar.ts';
import type { Species } from './species.ts';
import { isSpeciesId, SPECIES_IDS, type SpeciesId } from './species-id.ts';

const BY_ID: { readonly [Id in SpeciesId]: Species } = {
  beech,
  cherry,
  'douglas-fir': douglasFir,
  elm,
  hickory,
  mahogany,
  'red-maple': redMaple,
  'red-oak': redOak,
  'sugar-maple': sugarMaple,
  teak,
  walnut,
  'white-ash': whiteAsh,
  'white-oak': whiteOak,
  'yellow-birch': yellowBirch,
  'yellow-poplar': yellowPoplar,
};

/** All woods, sorted by id. */
export const SPECIES: readonly Species[] = SPECIES_IDS.map((id) => BY_ID[id]);

/** The wood of that id. */
export function speciesById(id: SpeciesId): Species {
  if (!isSpeciesId(id))
    throw new RangeError(`there is no wood ${JSON.stringify(id)}; there are ${SPECIES_IDS.join(', ')}`);
  return BY_ID[id];
}
