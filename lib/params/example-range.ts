import { formatInches, formatMm, formatNumber, steps, type UnitSystem } from '../units/format-length.ts';
import type { Known } from './apply-rules.ts';
import { effectiveRange } from './effective-range.ts';
import type { Param } from './param.ts';
import type { Spec } from './spec.ts';
import { MOST_VALUES, USUAL_VALUES } from './variation.ts';

/** Steps of an example: 1/8 in, 1 mm. */
const STEP: { readonly [U in UnitSystem]: number } = { in: 25.4 / 8, mm: 1 };

/** What one might try of a parameter, as text: the range that its limits and the other values leave; undefined when there is none. */
export function exampleRange(spec: Spec, known: Known, path: string, units: UnitSystem): string | undefined {
  const param = spec.table.get(path)!;
  if (param.kind === 'choice') return param.options.slice(0, MOST_VALUES).join(',');
  if (param.kind === 'flag') return 'yes,no';
  if (param.kind === 'text' || param.kind === 'lengths') return undefined;
  const came = known.get(path)!;
  const value = typeof came.value === 'number' ? came.value : param.min;
  const range = effectiveRange(spec, known, path, { ...came, value });
  return range && range.min < range.max ? rangeText(param, range, units) : undefined;
}

function rangeText(
  param: Extract<Param, { readonly min: number }>,
  { min, max }: { readonly min: number; readonly max: number },
  units: UnitSystem,
): string {
  if (param.kind === 'count' || param.kind === 'division') return `${min}..${Math.min(max, min + MOST_VALUES - 1)}`;
  if (param.kind === 'quantity') {
    const [low, high] = [min, max].map((value) => `${formatNumber(value, 6)} ${param.unit}`.trim());
    return `${low}..${high}:${USUAL_VALUES}`;
  }
  const [low, high] = [steps(min, STEP[units], 'up') * STEP[units], steps(max, STEP[units], 'down') * STEP[units]];
  const say = (mm: number): string => (units === 'in' ? formatInches(mm) : formatMm(mm));
  return low < high ? `${say(low)}..${say(high)}:${USUAL_VALUES}` : `${min} mm..${max} mm:${USUAL_VALUES}`;
}
