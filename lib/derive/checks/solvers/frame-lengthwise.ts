import type { Mm } from '../../../units/mm.ts';

/** Two frames with stretchers between them, pushed level along the table. */
export interface Lengthwise {
  /** N on the whole table. */
  readonly push: number;
  /** From the floor to where it is pushed. */
  readonly height: Mm;
  /** Between the frame center lines. */
  readonly span: Mm;
  /** Axis of the stretchers over the floor. */
  readonly stretcherHeight: Mm;
  readonly stretchers: number;
  /** MPa along the grain. */
  readonly e: number;
  /** mm⁴ of one stretcher, upright. */
  readonly stretcherI: number;
  /** mm⁴ of all posts of one frame together, for bending along the table. */
  readonly postsI: number;
  /** N mm/rad of one end of a stretcher. */
  readonly joint: number;
  /** N mm/rad, twist of the rail that the stretcher meets; Infinity when it meets the posts. */
  readonly railTwist: number;
}

/** How far the top goes and what gives. */
export interface LengthwiseSway {
  readonly sway: Mm;
  readonly stretchers: Mm;
  readonly joints: Mm;
  readonly railTwist: Mm;
  readonly posts: Mm;
  /** N mm in one end of a stretcher. */
  readonly jointMoment: number;
  /** N mm, torque in each end of a rail that twists. */
  readonly railTorque: number;
}

/**
 * Frames hinged at the floor and under the top, held upright by the stretchers alone:
 * (H h²/2) [S/(6E n I) + 1/(n k) + 1/k_t] + (H/2) [s³ + (h - s)³]/(3E ΣI). Without a stretcher nothing holds: Infinity.
 *
 * ```
 *  H ► ○═══════════○      top
 *      │           │
 *      ├───────────┤      stretcher, at s
 *      ○           ○      floor
 * ```
 */
export function lengthwiseSway(t: Lengthwise): LengthwiseSway {
  const { push, height, stretchers: n, stretcherHeight: s } = t;
  const lever = (push * height ** 2) / 2;
  const bent = (lever * t.span) / (6 * t.e * n * t.stretcherI);
  const joints = lever / (n * t.joint);
  const railTwist = lever / t.railTwist;
  const posts = (push * (s ** 3 + (height - s) ** 3)) / (6 * t.e * t.postsI);
  return {
    sway: bent + joints + railTwist + posts,
    stretchers: bent,
    joints,
    railTwist,
    posts,
    jointMoment: (push * height) / (2 * n),
    railTorque: t.railTwist === Infinity ? 0 : (push * height) / 4,
  };
}
