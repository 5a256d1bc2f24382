import { canServe } from '../derive/lumber/strip-plan/strip-model.ts';
import { formatLength, formatNumber, type UnitSystem } from '../units/format-length.ts';
import { costWords, hasCost } from './cost-words.ts';
import type { LumberSection } from './lumber-section.ts';
import { marksList } from './mark-order.ts';
import { mendWords } from './mend-words.ts';
import { pinWords } from './pin-words.ts';
import { proofText } from './plan-proof.ts';
import type { StripsFound } from './search-strips.ts';
import { stripPlanTable } from './strip-plan-table.ts';
import { stripsAsPlanned } from './strips-as-planned.ts';

/** Which board goes to which strip, or why there is no plan. */
export function stripSections(strips: StripsFound, units: UnitSystem): LumberSection[] {
  const { problem, status } = strips;
  const { plan } = status;
  if (!plan) return [{ title: 'Strip plan: there is none', lines: noPlanLines(strips, units) }];
  const lines = [
    costLine(strips),
    costWords(plan, problem, units),
    `the joints are those of these boards; to draw and check with them: --set "${stripsAsPlanned(plan, problem, units)}"`,
    `least reserve over the wedge ${formatLength(plan.reserve, units, 'down')}; left over: ${marksList(plan.unused)}`,
    `what is glued or ripped stays when it is pinned in the design: lumber: { pinned: '${pinWords(plan)}' }`,
    ...idlePins(strips),
  ];
  return [{ title: 'Strip plan, from the left edge', lines, table: stripPlanTable(plan, units) }];
}

/** What a plan costs, and how good it is. */
export function costLine({ problem, status, stopped }: StripsFound): string {
  const { plan, bound, done } = status;
  const weighted = hasCost(problem);
  const cost = weighted && plan ? [`cost ${formatNumber(plan.value, 2)}`] : [];
  const below = weighted && !done && bound > 0 ? ` (none is below ${formatNumber(bound, 2)})` : '';
  return [...cost, `${proofText(status)}${below}`, ...(stopped ? ['it was stopped'] : [])].join('; ');
}

/** Boards that the maker settled, and that can lie nowhere. */
function idlePins({ problem }: StripsFound): string[] {
  const able = new Set(problem.boards.filter((board) => canServe(board, problem)).map(({ mark }) => mark));
  const idle = (problem.pins ?? []).filter(({ mark }) => !able.has(mark)).map(({ mark }) => mark);
  return idle.length > 0 ? [`settled by hand, and too short or too narrow for any strip: ${marksList(idle)}`] : [];
}

function noPlanLines(strips: StripsFound, units: UnitSystem): string[] {
  const { shortage, stopped } = strips;
  return [
    whyNone(strips, units),
    ...(shortage ? mendWords(shortage, units) : []),
    ...(stopped ? ['it was stopped'] : []),
    ...idlePins(strips),
  ];
}

/** What keeps these boards from making the top. */
function whyNone({ problem, status: { done, work } }: StripsFound, units: UnitSystem): string {
  const { settings, centerThickness, boards } = problem;
  const able = boards.filter((board) => canServe(board, problem));
  const size = `${formatLength(settings.leastWidth, units, 'up', 16)} wide strips of ${formatLength(problem.length, units, 'up', 16)}`;
  if (able.length < settings.strips) {
    return `${settings.strips} strips are wanted, and ${able.length} boards are dry, long and wide enough for ${size}`;
  }
  const thick = able.filter(({ thickness }) => thickness >= centerThickness + settings.cleanUp).length;
  const center = `${thick} of ${able.length} boards are thick enough for the center line`;
  if (!done) return `none was found in ${Math.round(work)} steps; ${center}`;
  const pinned = problem.pins ? ', with those settled by hand where they are,' : '';
  return `no order of these boards${pinned} gives the wedge at its full width; ${center}`;
}
