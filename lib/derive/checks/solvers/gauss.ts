/** Points and weights of Gauss and Legendre on the stretch from -1 to 1. */
export interface GaussRule {
  readonly points: readonly number[];
  readonly weights: readonly number[];
}

const INNER = Math.sqrt(3 / 5);

/** Exact for polynomials up to degree 5. */
export const GAUSS_3: GaussRule = { points: [-INNER, 0, INNER], weights: [5 / 9, 8 / 9, 5 / 9] };

const NEAR = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3;
const FAR = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3;
const NEAR_WEIGHT = (322 + 13 * Math.sqrt(70)) / 900;
const FAR_WEIGHT = (322 - 13 * Math.sqrt(70)) / 900;

/** Exact for polynomials up to degree 9. */
export const GAUSS_5: GaussRule = {
  points: [-FAR, -NEAR, 0, NEAR, FAR],
  weights: [FAR_WEIGHT, NEAR_WEIGHT, 128 / 225, NEAR_WEIGHT, FAR_WEIGHT],
};

/** Integral of a function, with the rule on each of `panels` equal parts. */
export function integrate(f: (x: number) => number, from: number, to: number, rule: GaussRule, panels = 1): number {
  const half = (to - from) / (2 * panels);
  let sum = 0;
  for (let k = 0; k < panels; k++) {
    const middle = from + (2 * k + 1) * half;
    rule.points.forEach((p, i) => {
      sum += rule.weights[i]! * f(middle + p * half);
    });
  }
  return sum * half;
}
