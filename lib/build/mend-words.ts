import { explainInfeasible, type StripMend } from '../derive/lumber/strip-plan/explain-infeasible.ts';
import type { StripProblem } from '../derive/lumber/strip-plan/strip-problem.ts';
import { formatLength, type UnitSystem } from '../units/format-length.ts';

type Words = (mend: StripMend, by: string) => string;

const WORDS: { readonly [C in StripMend['change']]: Words } = {
  'board thicker': ({ mark }, by) => `board ${mark} ${by} thicker`,
  'board wider': ({ mark }, by) => `board ${mark} ${by} wider`,
  'top narrower': (_, by) => `a top ${by} narrower`,
  'top thinner on the center line': (_, by) => `a top ${by} thinner on the center line`,
  'one strip more': () => 'one strip more',
  'one strip less': () => 'one strip less',
  'without the pins': () => 'no boards settled by hand',
  'seam off the center line': () => 'a board over the center line instead of a seam there',
};

/** The smallest changes that would each give a plan; empty when none was found. */
export function mendWords(problem: StripProblem, units: UnitSystem): string[] {
  const { mends = [] } = explainInfeasible(problem) ?? {};
  if (mends.length === 0) return [];
  const words = mends.map((mend) => WORDS[mend.change](mend, formatLength(mend.by ?? 0, units, 'up', 16)));
  return [`any one of these would do: ${words.join('; ')}`];
}
