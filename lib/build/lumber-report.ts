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
import { tallyTable } from './strip-plan-table.ts';
import { stripSections } from './strip-sections.ts';

/** What to buy, what is bought, which board goes where: for a terminal. */
export function lumberReport(job: Job, plan: LumberPlan, units: UnitSystem): LumberSection[] {
  const { nominal, shop } = job;
  const buying = { title: 'Buying list', lines: [], table: buyingTable(plan.buying, nominal, shop, units) };
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
    ...(plan.tally ? [tallySection(plan.tally, job)] : []),
    ...(plan.strips ? stripSections(plan.strips, units) : []),
    ...cutSections(plan, units),
  ];
}

function tallySection(tally: Tally, { records: { boards = [] } }: Job): LumberSection {
  const wet = boards.filter(isTooWet).map(({ mark }) => mark);
  const verdict = tally.verdict === 'stop' ? 'stop buying: every strip has its board' : 'go on buying';
  return {
    title: `Tally while buying: ${verdict}`,
    lines: [
      'by thickness and width alone; which board goes where is told below',
      ...(wet.length > 0 ? [`too wet, and left out: ${marksList(wet)}`] : []),
    ],
    table: tallyTable(tally),
  };
}
