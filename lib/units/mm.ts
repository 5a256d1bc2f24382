/** A length in millimetres. A bare number is taken as mm; a value that carries another unit does not compile. */
export type Mm = number & { readonly __unit?: 'mm' };

/** An angle in degrees. The model never holds radians. */
export type Deg = number & { readonly __unit?: 'deg' };

/** Millimetres in one inch, exact by the international yard and pound agreement of 1959. */
export const MM_PER_INCH = 25.4;

/** Degrees from radians. */
export const degrees = (radians: number): Deg => (radians * 180) / Math.PI;

/** Radians from degrees, for the inside of a formula only. */
export const radians = (deg: Deg): number => (deg * Math.PI) / 180;
