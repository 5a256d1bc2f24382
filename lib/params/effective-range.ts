import { applyRulesTo, type Known, type KnownValue } from './apply-rules.ts';
import type { Param, Value } from './param.ts';
import type { Problem } from './rule.ts';
import type { Spec } from './spec.ts';

export interface EffectiveRange {
  readonly min: number;
  readonly max: number;
  /** Why each limit stands where it does, the rules first. */
  readonly because: string | undefined;
}

/** The range of a number by itself; undefined for what has none. */
export function staticRange(param: Param, value: Value): { readonly min: number; readonly max: number } | undefined {
  if (typeof value !== 'number') return undefined;
  return 'min' in param ? { min: param.min, max: param.max } : undefined;
}

/**
 * What the own range of a parameter and the other fields leave together. The rules are asked about the ends of the own
 * range and about the value that came: each names the limit it sets. Limits of whole numbers are whole. When the rules
 * contradict each other, `min` is above `max`.
 */
export function effectiveRange(spec: Spec, known: Known, path: string, came: KnownValue): EffectiveRange | undefined {
  const param = spec.table.get(path)!;
  const own = staticRange(param, came.value);
  if (!own) return undefined;
  const problems = [own.max, own.min, clamp(came.value as number, own)]
    .flatMap((value) => applyRulesTo(spec, known, path, { ...came, value }))
    .filter((problem) => problem.path === path);
  const upper = tightest(problems, (problem) => problem.max, own.max, -1);
  const lower = tightest(problems, (problem) => problem.min, own.min, 1);
  const because = [upper.because, lower.because, param.because].filter(Boolean);
  const reasons = because.length > 0 ? [...new Set(because)].join('; ') : undefined;
  const whole = param.kind === 'count' || param.kind === 'division';
  const [min, max] = whole ? [Math.ceil(lower.limit), Math.floor(upper.limit)] : [lower.limit, upper.limit];
  return { min, max, because: reasons };
}

/** The limit that leaves least, of the own one and those of the problems; `inward` is the sign of the way into the range. */
function tightest(
  problems: readonly Problem[],
  limitOf: (problem: Problem) => number | undefined,
  own: number,
  inward: 1 | -1,
): { readonly limit: number; readonly because?: string } {
  let best: { readonly limit: number; readonly because?: string } = { limit: own };
  for (const problem of problems) {
    const limit = limitOf(problem);
    if (limit !== undefined && (limit - best.limit) * inward > 0) best = { limit, because: problem.because };
  }
  return best;
}

const clamp = (value: number, { min, max }: { readonly min: number; readonly max: number }): number =>
  Math.min(Math.max(value, min), max);
