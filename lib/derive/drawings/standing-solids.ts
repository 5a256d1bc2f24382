import { type Assembly, placeOf, visibleParts } from '../../model/assembly.ts';
import { isEdgeProfile } from '../../model/feature.ts';
import { blankOf } from '../solids/solid-of.ts';
import type { PlacedSolid } from './placed-solid.ts';

/** The piece as one sees it: without loose tenons, and without the pockets that its joints hide. */
export const standingSolids = (assembly: Assembly): PlacedSolid[] =>
  visibleParts(assembly)
    .filter(({ kind }) => kind !== 'looseTenon')
    .map((part) => ({
      part: part.id,
      solid: blankOf({ ...part, features: part.features.filter(isEdgeProfile) }),
      frame: placeOf(assembly, part.id),
    }));
