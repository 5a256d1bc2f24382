import { formatInches, formatMm, formatNumber } from '../units/format-length.ts';
import { MM_PER_INCH, type Mm } from '../units/mm.ts';
import { parseLength } from '../units/parse-length.ts';

/** Round steps a person would write, coarse ones first. */
const INCH_STEPS = [8, 16, 32, 64].map((denominator) => MM_PER_INCH / denominator);
const MM_STEPS = [1, 0.5, 0.1];

interface Limits {
  readonly min: number;
  readonly max: number;
}

/**
 * Lengths to try instead of one outside the limits, best first: a little inside the limit that was crossed, round in
 * the unit of the input, and the limit itself as the last.
 */
export function nearLengths({ min, max }: Limits, value: Mm, unit: string): readonly string[] {
  if (min > max) return [];
  const below = value < min;
  const inward = Math.min((max - min) / 10, MM_PER_INCH);
  const target = below ? min + inward : max - inward;
  const texts = (unit === 'in' ? INCH_STEPS : MM_STEPS).map((step) => {
    const round = Math.round(target / step) * step;
    return unit === 'in' ? formatInches(round) : formatMm(round);
  });
  return [...texts, `${below ? min : max} mm`].filter((text) => {
    const read = parseLength(text);
    return read >= min && read <= max;
  });
}

/** The same for plain numbers: the limit that was crossed. */
export function nearNumbers({ min, max }: Limits, value: number, unit: string): readonly string[] {
  if (min > max) return [];
  const limit = value < min ? min : max;
  return [`${formatNumber(limit, 6)} ${unit}`.trim()];
}
