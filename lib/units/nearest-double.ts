/** Up to here every whole number is a double, and one division rounds once. */
const EXACT = 2n ** 53n;

/** Bits of the quotient that are worked out: 53 are kept, the rest decide the rounding. */
const BITS = 66;

/**
 * The double nearest to `num / den`, both not negative and `den` not 0. Dividing `Number(num)` by `Number(den)` rounds
 * three times as soon as one of them is over 2^53, and is not a number at all when both are over 2^1024.
 */
export function nearestDouble(num: bigint, den: bigint): number {
  if (num <= EXACT && den <= EXACT) return Number(num) / Number(den);
  const shift = Math.max(0, bits(den) - bits(num) + BITS);
  const scaled = num << BigInt(shift);
  const quotient = scaled / den;
  // An odd last bit stands for "and a little more", so that a remainder is never rounded as an exact half.
  const sticky = scaled % den === 0n ? quotient : quotient | 1n;
  const half = Math.floor(shift / 2);
  return Number(sticky) * 2 ** -half * 2 ** (half - shift);
}

const bits = (value: bigint): number => value.toString(16).length * 4;
