import type { StripStatus } from '../../../lib/derive/lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../../../lib/derive/lumber/strip-plan/strip-problem.ts';
import { planStrips, type StripSearchOptions } from '../../../lib/derive/lumber/strip-plan/strip-search.ts';

/** A search run to its end, or for so much work. */
export const solved = (problem: StripProblem, options: StripSearchOptions = {}, work = 20_000_000): StripStatus =>
  planStrips(problem, options).advance(work);
