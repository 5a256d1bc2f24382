/** The slash of a fraction. A face sets the digits around it small when its feature `frac` is asked for. */
export const FRACTION_SLASH = '\u2044';

/**
 * Fractions of an inch, `13 3/8`, with the slash that sets them as such. Only what a rule can show: a part of 2, 4, 8, 16, 32
 * or 64, less than one. Other slashes stay as they are.
 */
export function setFractions(text: string): string {
  return text.replace(
    /(?<![\w/.,])(\d{1,2})\/(2|4|8|16|32|64)(?![\w/]|[.,]\d)/g,
    (whole, top: string, bottom: string) =>
      Number(top) < Number(bottom) && Number(top) > 0 ? `${top}${FRACTION_SLASH}${bottom}` : whole,
  );
}
