import type { Tally } from '../derive/lumber/tally.ts';
import { isTooWet } from '../derive/lumber/too-wet.ts';
import type { UnitSystem } from '../units/format-length.ts';
import { buyingTable } from './buying-table.ts';
import { cutSections } from './cut-sections.ts';
import { filledColumns } from './filled-columns.ts';
import type { Job } from './job.ts';
import type { LumberPlan } from './lumber-plan.ts';
import type { LumberSection } from './lumber-section.ts';
import { marksList } from './mark-order.ts';
import type { MilledPlan } from './milled-plan.ts';
import { asMeasuredSection, changesSection } from './milled-sections.ts';
import { noWoodWords } from './no-wood-words.ts';
import { tallyTable } from './strip-plan-table.ts';
import { stripSections } from './strip-sections.ts';

/** What to buy, what is bought, which board goes where: for a terminal. */
export function lumberReport(job: Job, plan: LumberPlan, units: UnitSystem): LumberSection[] {
  const buying = { title: 'Buying list', lines: [], table: buyingTable(plan.buying, job, units) };
  const boards = plan.tally
    ? boardSections(job, plan, units)
    : [{ title: 'Boards', lines: ['there is no boards.csv beside the design yet'] }];
  return [buying, ...boards].map(narrow);
}

/** What becomes of the plan when boards came out otherwise: what is bought already is not listed again. */
export function milledReport(milled: MilledPlan, units: UnitSystem): LumberSection[] {
  return [
    asMeasuredSection(milled, units),
    ...boardSections(milled.job, milled.plan, units),
    ...changesSection(milled, units),
  ].map(narrow);
}

const narrow = (section: LumberSection): LumberSection =>
  section.table ? { ...section, table: filledColumns(section.table) } : section;

function boardSections(job: Job, plan: LumberPlan, units: UnitSystem): LumberSection[] {
  return [
    ...(plan.tally ? [tallySection(plan, plan.tally, job)] : []),
    ...(plan.strips ? stripSections(plan.strips, units) : []),
    ...cutSections(plan, units),
  ];
}

function tallySection(plan: LumberPlan, tally: Tally, { records: { boards = [] } }: Job): LumberSection {
  const wet = boards.filter(isTooWet).map(({ mark }) => mark);
  return {
    title: `Tally while buying: ${verdictWords(tally, plan)}`,
    lines: [
      'by thickness and width alone; which board goes where is told below',
      ...(tally.verdict === tally.bySizes ? [] : [tally.verdict === 'stop' ? MORE_BY_SIZES : LESS_BY_SIZES]),
      ...(wet.length > 0 ? [`too wet, and left out: ${marksList(wet)}`] : []),
    ],
    table: tallyTable(tally),
  };
}

/** Where a plan is known, it decides. */
function verdictWords({ verdict, by }: Tally, plan: LumberPlan): string {
  if (verdict === 'stop')
    return `stop buying: ${by === 'plan' ? 'the plan below has a board for everything' : 'every strip has its board'}`;
  return by === 'plan' ? `go on buying: ${noWoodWords(plan).join('; ')}` : 'go on buying';
}

/** Why the tally asks for more than a plan needs, and why it may ask for less. */
const MORE_BY_SIZES =
  'sizes alone miss something: they count strips as drawn, and a spare board; the plan takes strips as wide as boards come, and no spare';
const LESS_BY_SIZES =
  'sizes alone miss nothing: they see no defects, and not how strips lie side by side; the plan below does';
