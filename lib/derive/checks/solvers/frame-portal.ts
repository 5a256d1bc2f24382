import type { Mm } from '../../../units/mm.ts';

/** One frame seen from the end of the table, pushed level at the top. */
export interface Portal {
  /** N on this frame. */
  readonly push: number;
  /** From the floor to where it is pushed. */
  readonly height: Mm;
  /** Between the post axes. */
  readonly span: Mm;
  /** MPa along the grain. */
  readonly e: number;
  /** mm⁴ of one post, in the plane of the frame. */
  readonly postI: number;
  /** mm⁴ of the bearer or rail where it is least deep. */
  readonly railI: number;
  /** N mm/rad of one joint of post and rail; Infinity is rigid. */
  readonly joint: number;
}

/** How far a pushed frame goes and what it asks of a joint. */
export interface Sway {
  readonly sway: Mm;
  /** What part of it each piece gives. */
  readonly posts: Mm;
  readonly rails: Mm;
  readonly joints: Mm;
  /** N mm in one joint of post and rail. */
  readonly jointMoment: number;
}

/**
 * Feet free to turn, the bearer on top: H h³/6EI_c + H h² L/12EI_b + H h²/2k. Stretching is left out.
 *
 * ```
 *  H ►┌───────┐
 *     │       │
 *     ○       ○
 * ```
 */
export function hingedPortal({ push, height, span, e, postI, railI, joint }: Portal): Sway {
  return swayOf(
    (push * height ** 3) / (6 * e * postI),
    (push * height ** 2 * span) / (12 * e * railI),
    (push * height ** 2) / (2 * joint),
    (push * height) / 2,
  );
}

/** The same with an equal rail at the floor, four equal joints: half the sway and half the moment. */
export function closedPortal({ push, height, span, e, postI, railI, joint }: Portal): Sway {
  return swayOf(
    (push * height ** 3) / (24 * e * postI),
    (push * height ** 2 * span) / (24 * e * railI),
    (push * height ** 2) / (4 * joint),
    (push * height) / 4,
  );
}

/**
 * Feet that cannot turn, rigid joints: (H h³/12EI_c)(3κ + 2)/(6κ + 1), κ = I_b h/(I_c L). From memory (Kleinlogel,
 * Rahmenformeln); the frame solver gives the same to 1e-8.
 */
export function fixedPortal({ push, height, span, e, postI, railI }: Omit<Portal, 'joint'>): {
  readonly sway: Mm;
  /** N mm where post and rail meet, and at a foot. */
  readonly jointMoment: number;
  readonly footMoment: number;
} {
  const ratio = (railI * height) / (postI * span);
  const whole = (push * height) / (2 * (6 * ratio + 1));
  return {
    sway: ((push * height ** 3) / (12 * e * postI)) * ((3 * ratio + 2) / (6 * ratio + 1)),
    jointMoment: whole * 3 * ratio,
    footMoment: whole * (3 * ratio + 1),
  };
}

const swayOf = (posts: Mm, rails: Mm, joints: Mm, jointMoment: number): Sway => ({
  sway: posts + rails + joints,
  posts,
  rails,
  joints,
  jointMoment,
});
