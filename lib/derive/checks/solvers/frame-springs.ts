/** How hard the ends of a bent member resist turning, N mm/rad: each on its own, and one when the other turns. */
export interface TurnStiffness {
  readonly near: number;
  readonly far: number;
  readonly cross: number;
}

/**
 * A straight member with a turning spring at each end, the springs worked in exactly: with r = k / (k + 3EI/L) at either
 * end (1 rigid, 0 hinge), near 12 r EI/(4 - r r')L, far the same with r', cross 6 r r' EI/(4 - r r')L.
 *
 * @param stiffness EI / L, N mm.
 * @param near @param far springs, N mm/rad; Infinity is rigid.
 */
export function turnStiffness(stiffness: number, near: number, far: number): TurnStiffness {
  const r = grip(stiffness, near);
  const s = grip(stiffness, far);
  const unit = stiffness / (4 - r * s);
  return { near: 12 * r * unit, far: 12 * s * unit, cross: 6 * r * s * unit };
}

const grip = (stiffness: number, spring: number): number =>
  spring === Infinity ? 1 : spring / (spring + 3 * stiffness);

/** Twist of a member through its two springs, N mm/rad; 0 when an end turns freely. */
export const twistThrough = (stiffness: number, near: number, far: number): number =>
  1 / (1 / stiffness + 1 / near + 1 / far);
