import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';

/** A glued tenon, loose or worked on the rail; the wood is the weaker of the two parts. */
export interface Tenon {
  /** mm of glued depth: both halves of a loose tenon, or the one of a tenon worked on. */
  readonly depths: readonly Mm[];
  /** In the plane in which the joint turns. */
  readonly height: Mm;
  readonly thickness: Mm;
  /** MPa, shear along the grain. */
  readonly shear: number;
  /** MPa, modulus of rupture. */
  readonly bending: number;
}

/** Moments that break a tenon, before any factor, N mm. */
export interface TenonStrength {
  /** The glued cheeks of the shallower half. */
  readonly glue: number;
  readonly tenon: number;
  readonly governs: 'glue' | 'tenon';
  /** The lesser of the two. */
  readonly strength: number;
}

/**
 * Two glued cheeks twisted in their plane, M = 2 f_v l h √(l² + h²)/6, and the tenon bent, M = f_m t h²/6; the lesser
 * holds (Smardzewski, Furniture Design, 2015, doi 10.1007/978-3-319-19533-9). On the low side where it was tested:
 * Eckelman, Uysal and Haviarova, BioResources 11(3):7162 (2016), one size, two oaks.
 */
export function tenonStrength(t: Tenon): TenonStrength {
  const glue = Math.min(...t.depths.map((depth) => cheekStrength(t, depth)));
  const tenon = positive('bending strength', t.bending, ' MPa') * tenonModulus(t);
  return { glue, tenon, governs: glue <= tenon ? 'glue' : 'tenon', strength: Math.min(glue, tenon) };
}

function cheekStrength({ height, shear }: Tenon, depth: Mm): number {
  const l = positive('depth', depth, ' mm');
  const h = positive('height', height, ' mm');
  return (2 * positive('shear strength', shear, ' MPa') * l * h * Math.hypot(l, h)) / 6;
}

const tenonModulus = ({ height, thickness }: Tenon): number => (thickness * height ** 2) / 6;

/** Stresses in a tenon, MPa. */
export interface TenonStress {
  /** In the corner of the worst half, twist and shear added as vectors. */
  readonly glue: number;
  /** Bending of the tenon. */
  readonly tenon: number;
}

/**
 * Stresses under a moment in N mm and a shear force in N along the height: the twist of a cheek is square to its
 * diagonal at the corner, and the shear V/2lh joins its part along the height.
 *
 * ```
 *   ┌──────┐ ↗ twist     l: depth
 *   │      │ ↑ shear     h: height
 *   └──────┘
 * ```
 */
export function tenonStress(t: Tenon, moment: number, shearForce = 0): TenonStress {
  const h = t.height;
  const corner = (l: Mm): number => {
    const diagonal = Math.hypot(l, h);
    const twist = (t.shear * Math.abs(moment)) / cheekStrength(t, l);
    return Math.hypot((twist * h) / diagonal, (twist * l) / diagonal + Math.abs(shearForce) / (2 * l * h));
  };
  return { glue: Math.max(...t.depths.map(corner)), tenon: Math.abs(moment) / tenonModulus(t) };
}
