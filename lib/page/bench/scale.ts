import type { Param } from '../../params/param.ts';
import { formatInches, formatMm, formatNumber, steps, type UnitSystem } from '../../units/format-length.ts';
import { MM_PER_INCH } from '../../units/mm.ts';

/** Round steps of a slider: what a maker would change a value by. */
export interface Scale {
  /** In the unit of the parameter, mm for a length. */
  readonly step: number;
  /** The value so many steps from zero, as one would type it. */
  readonly text: (count: number) => string;
}

interface Limits {
  readonly min: number;
  readonly max: number;
}

/** A slider with fewer stops is coarse, with many more it cannot be set by hand: our convention. */
const FEWEST = 40;

const INCH_STEPS = [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 32, 1 / 64].map((part) => part * MM_PER_INCH);
const MM_STEPS = [10, 5, 1, 0.5, 0.1];
const PLAIN_STEPS = [10, 5, 1, 0.5, 0.1, 0.05, 0.01];

/** A thousandth of an inch, for what is thinner than a 64th. */
const MIL = MM_PER_INCH / 1000;

const coarsest = (options: readonly number[], span: number): number | undefined =>
  options.find((step) => span / step >= FEWEST);

/** The scale of a parameter that is a number; undefined for all others. */
export function scaleOf(param: Param, units: UnitSystem): Scale | undefined {
  if (param.kind === 'count' || param.kind === 'division') return { step: 1, text: (count) => `${count}` };
  if (param.kind === 'quantity') {
    const step = coarsest(PLAIN_STEPS, param.max - param.min) ?? 0.01;
    return { step, text: (count) => `${formatNumber(count * step, 2)} ${param.unit}`.trim() };
  }
  if (param.kind !== 'length') return undefined;
  return units === 'in' ? inchScale(param) : mmScale(param);
}

/** Never coarser than 1/8 in: nobody cuts to the inch. */
function inchScale({ min, max }: Limits): Scale {
  const step = coarsest(INCH_STEPS.slice(3), max - min);
  if (step !== undefined) return { step, text: (count) => formatInches(count * step) };
  if (max - min >= MM_PER_INCH / 8)
    return { step: MM_PER_INCH / 64, text: (k) => formatInches((k * MM_PER_INCH) / 64) };
  return { step: MIL, text: (count) => `${formatNumber(count / 1000, 3)} in` };
}

/** Never coarser than 1 mm. */
function mmScale({ min, max }: Limits): Scale {
  const step = coarsest(MM_STEPS.slice(2), max - min) ?? (max - min > 2 ? 0.1 : 0.01);
  return { step, text: (count) => formatMm(count * step, 2) };
}

/** The stops between limits, both within them. */
export const stopsOf = ({ step }: Scale, { min, max }: Limits): { readonly first: number; readonly last: number } => ({
  first: steps(min, step, 'up'),
  last: steps(max, step, 'down'),
});
