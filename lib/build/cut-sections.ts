import type { CutJob } from '../derive/lumber/cut-plan/cut-jobs.ts';
import { BOUND_HOLDS_FOR } from '../derive/lumber/cut-plan/cut-plan.ts';
import type { CutProgress } from '../derive/lumber/cut-plan/cut-search.ts';
import { formatNumber, type UnitSystem } from '../units/format-length.ts';
import { blanksWords } from './blanks-words.ts';
import { cutsTable } from './cut-plan-table.ts';
import { keptWords } from './kept-words.ts';
import type { LumberPlan } from './lumber-plan.ts';
import type { LumberSection } from './lumber-section.ts';
import { misfitWords } from './misfit-words.ts';
import { NOT_KEPT } from './not-kept.ts';
import { proofText } from './plan-proof.ts';

/** How the rest of the parts is cut, class by class. */
export function cutSections(plan: LumberPlan, units: UnitSystem): LumberSection[] {
  const { cuts, strips, stopped, wanted, kept } = plan;
  const lines = cuts.flatMap(({ job, progress }) => [
    `${job.lumber}: ${costWords(progress, job.costIn)}`,
    ...misfitWords(progress.misfits),
  ]);
  lines.push(...blanksWords(wanted, units));
  if (kept) lines.push(keptWords(kept));
  const planned = cuts.some(({ progress }) => progress.plan);
  if (planned && strips && !strips.status.plan) lines.push(NOT_KEPT);
  if (stopped)
    lines.push(cuts.length > 0 ? 'it was stopped; this is the best so far' : 'it was stopped before this began');
  if (planned) lines.push(BOUND_HOLDS_FOR);
  if (lines.length === 0) return [];
  return [{ title: 'Cut plan', lines, table: cutsTable(plan, units) }];
}

function costWords({ plan, value, bound, gap, state, misfits }: CutProgress, unit: CutJob['costIn']): string {
  if (!plan) return misfits.length > 0 ? 'no plan' : 'no plan; the search has not found one yet';
  const done = state === 'optimal';
  const proof = `${proofText({ done, gap })}${done ? '' : ` (none is below ${formatNumber(bound, 1)})`}`;
  const boards = plan.boards.length === 1 ? 'one board' : `${plan.boards.length} boards`;
  const cost =
    unit === 'money'
      ? `${boards} for ${formatNumber(value, 2)}, by their prices`
      : `${boards} of ${formatNumber(value, 1)} board feet`;
  return `${cost}, ${formatNumber(plan.yield * 100, 0)} % of it in parts; ${proof}`;
}
