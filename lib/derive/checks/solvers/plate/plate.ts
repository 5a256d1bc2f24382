import type { Vec2 } from '../../../../geometry/vec.ts';
import type { Mm } from '../../../../units/mm.ts';
import type { PlateGrid } from './grid.ts';

/** Stiffness of the wood of a plate; flat-sawn wood has its tangential direction across, quarter-sawn its radial one. */
export interface PlateWood {
  /** MPa, E along the grain. */
  readonly along: number;
  /** MPa, E across the grain, in the plane of the plate. */
  readonly across: number;
  /** MPa, shear between the two. */
  readonly shear: number;
  /** Poisson's ratio: strain across by strain along, when pulled along. */
  readonly poisson: number;
}

/** A way in which a point of the plate can move: down, or turning with a slope along or across. */
export type PlateWay = 'down' | 'slope along' | 'slope across';

/** The ways in the order in which a node carries them. */
export const PLATE_WAYS: readonly PlateWay[] = ['down', 'slope along', 'slope across'];

/** A line along or across the plate, or a point when both ends are one, where something holds it both up and down. */
export interface PlateSupport {
  /** mm. */
  readonly from: Vec2;
  readonly to: Vec2;
  /** What is held; absent: it cannot go down or up, slopes are free. */
  readonly holds?: readonly PlateWay[];
}

/**
 * A rectangular top as a thin plate.
 *
 * ```
 *   y ▲  across the grain
 *     ┌──────────────────────┐
 *     │   ║              ║   │   ║ bearers
 *     └──────────────────────┘──► x along the grain
 * ```
 *
 * Frame: x along the grain, y across, any origin; z and deflections down. Handled: thickness that changes from place to
 * place, supports along grid lines. Not handled: shear bending, lift-off from a support, a middle plane that is not flat.
 */
export interface Plate {
  readonly grid: PlateGrid;
  readonly wood: PlateWood;
  /** mm at a point of the plan. */
  readonly thickness: (x: Mm, y: Mm) => Mm;
  readonly supports: readonly PlateSupport[];
}

/** Opposite corners of a rectangle in the plan, mm, the lower coordinates first. */
export interface PlateArea {
  readonly from: Vec2;
  readonly to: Vec2;
}

/** What presses on a plate, downward positive. */
export type PlateLoad =
  | { readonly kind: 'point'; readonly at: Vec2 /** N. */; readonly force: number }
  | {
      readonly kind: 'spread';
      /** MPa. */
      readonly pressure: number;
      /** The whole plate when absent. */
      readonly over?: PlateArea;
    }
  | { readonly kind: 'own weight' /** kg/m³. */; readonly density: number };
