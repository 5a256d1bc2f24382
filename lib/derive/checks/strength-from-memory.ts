import type { SpeciesField } from '../../wood/species.ts';
import type { SpeciesId } from '../../wood/species-id.ts';
import { fromMemory } from './check.ts';
import { VARIATION } from './solvers/working-stress.ts';

/** What a working stress rests on that is from memory, as words: the strength itself, and how far pieces lie apart. */
export const strengthFromMemory = (wood: SpeciesId, strength: SpeciesField): string[] => [
  ...fromMemory(wood, [strength]),
  ...(VARIATION.status === 'memory' ? [`coefficients of variation of strength (${VARIATION.source})`] : []),
];
