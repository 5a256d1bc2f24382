const digits = (text: string, zero: readonly string[]): string =>
  [...text].map((digit) => zero[Number(digit)]!).join('');

const ABOVE = [...'\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079'];
const BELOW = [...'\u2080\u2081\u2082\u2083\u2084\u2085\u2086\u2087\u2088\u2089'];

/** Fractions of an inch, `13 3/8"`, with raised and lowered digits around U+2044. Other slashes stay as they are. */
export function builtFractions(text: string): string {
  return text.replace(
    /(\d )?(?<![\d/])(\d+)\/(\d+)(?=")/g,
    (_, whole: string | undefined, top: string, bottom: string) =>
      `${whole ? whole.trim() : ''}${digits(top, ABOVE)}\u2044${digits(bottom, BELOW)}`,
  );
}
