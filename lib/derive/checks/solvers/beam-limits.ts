import { type Figure, ours } from './ours.ts';

/** Sag over span at once, own weight and spread load together: 0.02 in per foot. */
export const SAG_AT_ONCE: Figure = ours(
  1 / 600,
  'our convention; 0.02 in per foot read in Fine Woodworking: Building Furniture (2007) p. 25',
);

/** Sag over span in time, permanent loads times `CREEP_ALONG`: from 1/32 in per foot on it shows. */
export const SAG_IN_TIME: Figure = ours(
  1 / 384,
  'our convention; 1/32 in per foot read in Fine Woodworking: Building Furniture (2007) p. 25',
);

/** How far an overhang may go down, or up, over its length. */
export const TIP_GIVE: Figure = ours(1 / 300, 'our convention');

/** Deflection after some years of a permanent load over the first one, along the grain. */
export const CREEP_ALONG: Figure = ours(
  2,
  'our convention; creep about equals the first deflection (FPL-GTR-190, read), the NDS has 1.5 for seasoned timber',
);
