import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';

/**
 * Torsion constant of a rectangle, mm⁴: a c³ (1/3 - 0.21 (c/a)(1 - c⁴/12a⁴)), a the longer and c the shorter side
 * (Roark, Formulas for Stress and Strain, as quoted in public tables). At most 0.2 % above and 0.5 % below the series
 * (computed).
 */
export function torsionConstant(side: Mm, other: Mm): number {
  const { a, c } = sides(side, other);
  return a * c ** 3 * (1 / 3 - 0.21 * (c / a) * (1 - c ** 4 / (12 * a ** 4)));
}

/** The same by the series of Saint-Venant, to the last digits. */
export function torsionConstantExact(side: Mm, other: Mm): number {
  const { a, c } = sides(side, other);
  const sum = oddSum((n) => Math.tanh((n * Math.PI * a) / (2 * c)) / n ** 5);
  return ((a * c ** 3) / 3) * (1 - ((192 * c) / (Math.PI ** 5 * a)) * sum);
}

/** Greatest shear stress of a rectangle under a torque in N mm, MPa: in the middle of its longer sides. Saint-Venant. */
export function twistShear(torque: number, side: Mm, other: Mm): number {
  const { a, c } = sides(side, other);
  const sum = oddSum((n) => 1 / (n * n * Math.cosh((n * Math.PI * a) / (2 * c))));
  return ((torque * c) / torsionConstantExact(a, c)) * (1 - (8 / Math.PI ** 2) * sum);
}

/**
 * How stiffly a cross rail holds a stretcher that meets its middle, N mm/rad: both halves twist, 4 G J / L.
 *
 * @param shear modulus in MPa, the lower of G_LT and G_LR (our convention).
 * @param length between the post axes.
 */
export function railTwistStiffness(shear: number, j: number, length: Mm): number {
  return (4 * positive('shear modulus', shear, ' MPa') * j) / positive('length', length, ' mm');
}

function sides(one: Mm, other: Mm): { readonly a: Mm; readonly c: Mm } {
  positive('side', one, ' mm');
  positive('side', other, ' mm');
  return { a: Math.max(one, other), c: Math.min(one, other) };
}

function oddSum(term: (n: number) => number): number {
  let sum = 0;
  for (let n = 199; n > 0; n -= 2) sum += term(n);
  return sum;
}
