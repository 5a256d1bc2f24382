import { BOUND_HOLDS_FOR } from '../derive/lumber/cut-plan/cut-plan.ts';
import type { CutProgress, Misfit } from '../derive/lumber/cut-plan/cut-search.ts';
import { canServe } from '../derive/lumber/strip-plan/strip-model.ts';
import { formatLength, formatNumber, type UnitSystem } from '../units/format-length.ts';
import { buyingTable } from './buying-table.ts';
import type { Table } from './cut-list-table.ts';
import { cutPlanTable } from './cut-plan-table.ts';
import type { Job } from './job.ts';
import type { LumberPlan } from './lumber-plan.ts';
import { mendWords } from './mend-words.ts';
import { proofText } from './plan-proof.ts';
import { stripPlanTable, tallyTable } from './strip-plan-table.ts';
import { stripsAsPlanned } from './strips-as-planned.ts';

/** A stretch of the report on lumber: a heading, sentences, and a table when there is one. */
export interface LumberSection {
  readonly title: string;
  readonly lines: readonly string[];
  readonly table?: Table;
}

/** What to buy, what is bought, which board goes where: for a terminal. */
export function lumberReport(job: Job, plan: LumberPlan, units: UnitSystem): LumberSection[] {
  const { nominal, shop } = job;
  const buying = { title: 'Buying list', lines: [], table: buyingTable(plan.buying, nominal, shop, units) };
  const { tally } = plan;
  if (!tally) return [buying, { title: 'Boards', lines: ['there is no boards.csv beside the design yet'] }];
  const verdict = tally.verdict === 'stop' ? 'stop buying: every strip has its board' : 'go on buying';
  return [
    buying,
    {
      title: `Tally while buying: ${verdict}`,
      lines: ['by thickness and width alone; which board goes where is told below'],
      table: tallyTable(tally),
    },
    ...stripSections(plan, units),
    ...cutSections(plan, units),
  ];
}

function stripSections({ strips, stopped }: LumberPlan, units: UnitSystem): LumberSection[] {
  if (!strips) return [];
  const { plan, bound, done, work } = strips.status;
  if (!plan)
    return [
      {
        title: 'Strip plan: there is none',
        lines: [whyNone(strips, units), ...(strips.status.done ? mendWords(strips.problem, units) : [])],
      },
    ];
  const proof = `${proofText(strips.status)}${done ? '' : ` (none is below ${formatNumber(bound, 2)})`}${stopped ? '; it was stopped' : ''}`;
  const lines = [
    `cost ${formatNumber(plan.value, 2)}; ${proof}; ${Math.round(work)} steps`,
    `the joints are those of these boards; to draw and check with them: --set "${stripsAsPlanned(plan, strips.problem, units)}"`,
    `least reserve over the wedge ${formatLength(plan.reserve, units, 'down')}; left over: ${plan.unused.join(', ') || 'none'}`,
  ];
  return [{ title: 'Strip plan, from the left edge', lines, table: stripPlanTable(plan, units) }];
}

/** What keeps these boards from making the top. */
function whyNone({ problem, status: { done, work } }: NonNullable<LumberPlan['strips']>, units: UnitSystem): string {
  const { settings, centerThickness, boards } = problem;
  const able = boards.filter((board) => canServe(board, problem));
  const size = `${formatLength(settings.leastWidth, units, 'up', 16)} wide strips of ${formatLength(problem.length, units, 'up', 16)}`;
  if (able.length < settings.strips) {
    return `${settings.strips} strips are wanted, and ${able.length} boards are dry, long and wide enough for ${size}`;
  }
  const thick = able.filter(({ thickness }) => thickness >= centerThickness + settings.cleanUp).length;
  const center = `${thick} of ${able.length} boards are thick enough for the center line`;
  if (!done) return `none was found in ${Math.round(work)} steps; ${center}`;
  const pinned = problem.pins ? ' and as they are settled by hand' : '';
  return `no order of these boards${pinned} gives the wedge at its full width; ${center}`;
}

function cutSections(plan: LumberPlan, units: UnitSystem): LumberSection[] {
  const lines = plan.cuts.map(({ job, progress }) => `${job.lumber}: ${progressText(progress, job.costIn, units)}`);
  if (plan.stopped) lines.push('it was stopped; this is the best so far');
  if (lines.length === 0) return [];
  return [{ title: 'Cut plan', lines: [...lines, BOUND_HOLDS_FOR], table: cutPlanTable(plan, units) }];
}

function progressText(
  { plan, value, bound, gap, state, misfits }: CutProgress,
  unit: string,
  units: UnitSystem,
): string {
  const left = misfits.map((misfit) => misfitText(misfit, units)).join('; ');
  if (!plan) return `no plan; ${left || 'the search has not found one yet'}`;
  const done = state === 'optimal';
  const proof = `${proofText({ done, gap })}${done ? '' : ` (none is below ${formatNumber(bound, 1)})`}`;
  const cost = `boards for ${formatNumber(value, 1)} (${unit}), ${formatNumber(plan.yield * 100, 0)} % of them in parts`;
  return [`${cost}; ${proof}`, left].filter(Boolean).join('; ');
}

const misfitText = ({ part, count, reason, wanted }: Misfit, units: UnitSystem): string =>
  `${count} of ${part}: ${reason}; a clear board ${formatLength(wanted.width, units, 'up', 16)} x ${formatLength(wanted.length, units, 'up', 16)} would do`;
