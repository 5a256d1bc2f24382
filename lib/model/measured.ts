import type { Surface } from '../geometry/surface.ts';

/** What was measured of a piece while it is made, ready to be built with; absent is nominal. */
export interface Measured {
  /** Underside of the top: depth below the show face over x along and y across, in the frame of the top. */
  readonly underside?: Surface;
}
