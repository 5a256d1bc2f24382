import { type AssembledPlate, assemblePlate } from './assemble.ts';
import { factorBand } from './band-factor.ts';
import { solveBand } from './band-solve.ts';
import { isHeld } from './held.ts';
import { nodeLoads } from './loads.ts';
import type { Plate, PlateLoad } from './plate.ts';

/** A plate ready for any number of load cases: its stiffness is that of `assemblePlate`, factored. */
export type FactoredPlate = AssembledPlate & { readonly factored: true };

/** How a plate moves under the loads of one case. */
export interface PlateField {
  readonly plate: FactoredPlate;
  /** Down in mm, slope along and slope across as pure numbers, three a node. */
  readonly moves: Float64Array;
}

/**
 * The work that all load cases share.
 *
 * @throws RangeError when the supports let the plate drop or tilt (ask `isHeld` first), when a support misses the grid, or
 * when a thickness or modulus is not positive.
 */
export function factorPlate(plate: Plate): FactoredPlate {
  if (!isHeld(plate)) throw new RangeError(`${plate.supports.length} supports let the plate drop or tilt`);
  const assembled = assemblePlate(plate);
  factorBand(assembled.stiffness);
  return { ...assembled, factored: true };
}

/** How the plate moves under loads that act together. */
export function solvePlate(plate: FactoredPlate, loads: readonly PlateLoad[]): PlateField {
  const moves = nodeLoads(plate, loads);
  solveBand(plate.stiffness, moves);
  return { plate, moves };
}
