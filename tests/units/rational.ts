/** An exact fraction, for checking what the library computes in doubles. The bottom is positive. */
export interface Rational {
  readonly top: bigint;
  readonly bottom: bigint;
}

export const rational = (top: bigint | number, bottom: bigint | number = 1n): Rational => ({
  top: BigInt(top),
  bottom: BigInt(bottom),
});

export const add = (a: Rational, b: Rational): Rational =>
  rational(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);

export const subtract = (a: Rational, b: Rational): Rational => add(a, rational(-b.top, b.bottom));

export const times = (a: Rational, b: Rational): Rational => rational(a.top * b.top, a.bottom * b.bottom);

/** Negative, zero or positive, as `a` is below, at or above `b`. */
export const compare = (a: Rational, b: Rational): bigint => a.top * b.bottom - b.top * a.bottom;

export const absolute = (a: Rational): Rational => (a.top < 0n ? rational(-a.top, a.bottom) : a);

/** The exact value of a finite double. */
export function exact(value: number): Rational {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  const bits = view.getBigUint64(0);
  const exponent = Number((bits >> 52n) & 0x7ffn);
  const mantissa = (bits & ((1n << 52n) - 1n)) | (exponent > 0 ? 1n << 52n : 0n);
  const power = Math.max(exponent, 1) - 1075;
  const sign = bits >> 63n ? -1n : 1n;
  return power >= 0 ? rational(sign * (mantissa << BigInt(power))) : rational(sign * mantissa, 1n << BigInt(-power));
}

/** The double just below a positive one. */
export function doubleBelow(value: number): number {
  return shifted(value, -1n);
}

/** The double just above a positive one. */
export function doubleAbove(value: number): number {
  return shifted(value, 1n);
}

function shifted(value: number, by: bigint): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  view.setBigUint64(0, view.getBigUint64(0) + by);
  return view.getFloat64(0);
}

/** Whether no other double lies nearer to the true positive value. */
export function isNearestDouble(value: number, truth: Rational): boolean {
  const off = (x: number): Rational => absolute(subtract(exact(x), truth));
  return [doubleBelow(value), doubleAbove(value)].every((other) => compare(off(value), off(other)) <= 0n);
}
