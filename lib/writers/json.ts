/** Decimals that a number keeps in a JSON file: a millionth of a mm. */
const DECIMALS = 6;

/** A readable JSON document: numbers rounded to 6 decimals, never -0, keys in the order of the data, a final line end. */
export function json(document: object): string {
  return `${JSON.stringify(document, rounded, 2)}\n`;
}

function rounded(_key: string, value: unknown): unknown {
  if (typeof value !== 'number') return value;
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be written as JSON`);
  const short = Number(value.toFixed(DECIMALS));
  return short === 0 ? 0 : short;
}
