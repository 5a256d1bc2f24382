import type { Plane, Surface } from '../geometry/surface.ts';
import type { Mm } from '../units/mm.ts';
import type { Station } from './records.ts';

/** A reading beside what its plane says there. */
export interface StationFit {
  readonly station: Station;
  /** Name of the plane; a reading on the ridge counts for both, and stands once for each. */
  readonly plane: string;
  readonly fitted: Mm;
  /** mm, measured less fitted: above 0 the wood stands proud there, a high spot. */
  readonly residual: Mm;
}

/** One half of a top, or the whole of a flat one, as its readings make it. */
export interface PlaneFit {
  /** Depth below the show face over x and y, in the frame of the top. */
  readonly plane: Plane;
  readonly readings: number;
  /** mm, root of the mean square of the residuals. */
  readonly rms: Mm;
  /** mm by which a long edge at the far end is thicker than straight boards would have it, seen from the reference end; undefined when the readings cannot tell. */
  readonly twist?: Mm;
  /** Standard deviation of the rises and of the height over the middle of the readings, for readings off by 1 mm. */
  readonly spread: { readonly a: number; readonly b: number; readonly middle: number };
}

/** The underside of a top fitted to its readings by least squares, plane by plane. */
export interface UndersideFit {
  /** Day of measuring, YYYY-MM-DD. */
  readonly date: string;
  /** Takes the place of the nominal underside. */
  readonly surface: Surface;
  readonly planes: readonly PlaneFit[];
  readonly stations: readonly StationFit[];
}
