import type { BoardSpot } from '../derive/lumber/strip-plan/moved-boards.ts';
import { canServe } from '../derive/lumber/strip-plan/strip-model.ts';
import type { StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';
import { formatInches, formatLength, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { boardsOfCuts } from './boards-of-pieces.ts';
import { costChanges, hasCost } from './cost-words.ts';
import type { Table } from './cut-list-table.ts';
import type { LumberSection } from './lumber-section.ts';
import { byMark, marksList } from './mark-order.ts';
import type { MilledPlan } from './milled-plan.ts';
import { endFirst } from './strip-plan-table.ts';
import { costLine } from './strip-sections.ts';

/** The plan of the boards as measured, in short. */
export function asMeasuredSection(
  { boards, before: { strips: before, kept } }: MilledPlan,
  units: UnitSystem,
): LumberSection {
  const inTop = new Set(before?.problem.boards.filter((board) => canServe(board, before.problem)).map((b) => b.mark));
  const said = boards.map(({ mark, thickness, measured }) => {
    const size = `board ${mark} came out ${formatLength(thickness, units)} thick, measured ${formatLength(measured, units)}`;
    if (kept?.boards.includes(mark)) return `${size}; as measured it is kept for other parts`;
    return before && !inTop.has(mark) ? `${size}; for the strips it is too short, too narrow or too wet anyway` : size;
  });
  const plan = before?.status.plan;
  const short =
    before &&
    (plan
      ? `the strips as measured: ${costLine(before)}; least reserve over the wedge ${formatLength(plan.reserve, units, 'down')}`
      : 'the strips as measured: there was no plan');
  return {
    title: 'What if',
    lines: [...said, ...(short ? [short] : []), 'all that follows is for the boards as they came out'],
  };
}

/** What moves, and what that costs. */
export function changesSection(milled: MilledPlan, units: UnitSystem): LumberSection[] {
  const { before, plan, moved } = milled;
  const title = 'What changes';
  const recut = recutLines(milled);
  if (!before.strips) return [{ title, lines: recut }];
  const [was, is] = [before.strips.status.plan, plan.strips?.status.plan];
  if (!is) return [{ title, lines: [was ? NO_MORE : 'the strips had no plan before, and have none now'] }];
  if (!was || !moved) return [{ title, lines: ['the strips had no plan before, and now they have one'] }];
  const early = before.stopped || plan.stopped ? [STOPPED] : [];
  const lines = [
    ...early,
    ...movesLines(milled),
    ...costLines(milled, was, is, units),
    ...spareLines(milled, was, is, units),
    ...keptLines(milled),
    ...recut,
  ];
  return [{ title, lines, ...(moved.length > 0 ? { table: movesTable(milled, units) } : {}) }];
}

const STOPPED = 'the search was stopped: this is the difference as far as it had come';

const NO_MORE =
  'with the boards as they came out there is no plan for the strips any more; what would mend it is told above';

function movesLines({ moved = [] }: MilledPlan): string[] {
  if (moved.length > 0) return [];
  return ['nothing moves in the top: every board stays in its strip, with the same face up and the same end first'];
}

function costLines({ before }: MilledPlan, was: StripPlan, is: StripPlan, units: UnitSystem): string[] {
  const { problem } = before.strips!;
  const changes = costChanges(was, is, problem, units);
  const terms = changes.length > 0 ? [changes.join('; ')] : [];
  if (!hasCost(problem)) return terms;
  const [cost, other] = [is.value, was.value].map((value) => formatNumber(value, 2));
  if (cost === other) return [`it costs the same: ${cost}`, ...terms];
  const by = formatNumber(Math.abs(is.value - was.value), 2);
  return [`${is.value > was.value ? 'dearer' : 'cheaper'} by ${by}: ${cost} in place of ${other}`, ...terms];
}

function spareLines({ plan: { kept } }: MilledPlan, was: StripPlan, is: StripPlan, units: UnitSystem): string[] {
  const down = (mm: Mm): string => formatLength(mm, units, 'down');
  const [reserve, other] = [down(is.reserve), down(was.reserve)];
  const gone = is.unused.filter((mark) => !was.unused.includes(mark));
  const taken = was.unused.filter((mark) => !is.unused.includes(mark) && !kept?.boards.includes(mark));
  return [
    `least reserve over the wedge ${reserve}${reserve === other ? ', as before' : ` in place of ${other}`}`,
    ...(gone.length > 0 ? [`spared, and free for other parts: ${marksList(gone)}`] : []),
    ...(taken.length > 0 ? [`taken in from what was left over: ${marksList(taken)}`] : []),
  ];
}

/** Boards that are kept for other parts now, or are no more. */
function keptLines({ before, plan }: MilledPlan): string[] {
  const [were, are] = [before.kept?.boards ?? [], plan.kept?.boards ?? []];
  const gone = were.filter((mark) => !are.includes(mark));
  const come = are.filter((mark) => !were.includes(mark));
  return [
    ...(come.length > 0 ? [`kept for other parts now: ${marksList(come)}`] : []),
    ...(gone.length > 0 ? [`not kept for other parts any more: ${marksList(gone)}`] : []),
  ];
}

/** Other parts that come from other boards, those that go the same way together. */
function recutLines({ recut, before, plan }: MilledPlan): string[] {
  if (before.stopped || plan.stopped) return [];
  if (boardsOfCuts(before).size + boardsOfCuts(plan).size === 0) return [];
  if (recut.length === 0) return ['the other parts are cut from the same boards as before'];
  const groups = new Map<string, string[]>();
  for (const { part, before: was, after: is } of recut) {
    const way =
      is === undefined
        ? `not cut any more (${was} before)`
        : `cut from ${is}${was === undefined ? '' : ` in place of ${was}`}`;
    groups.set(way, [...(groups.get(way) ?? []), part]);
  }
  return [...groups].map(([way, parts]) => `${marksList(parts)}: ${way}`);
}

function movesTable({ moved = [] }: MilledPlan, units: UnitSystem): Table {
  return {
    columns: [{ head: 'board' }, { head: 'was' }, { head: 'now' }],
    rows: moved
      .toSorted((a, b) => byMark(a.mark, b.mark))
      .map(({ mark, before, after }) => [mark, spotWords(before, units), spotWords(after, units)]),
  };
}

/** `strip 3, show board, face A up, far end first, ripped to 5 3/8 in`. */
function spotWords(spot: BoardSpot | undefined, units: UnitSystem): string {
  if (!spot) return 'left over';
  const { strip, layer, faceUp, turned, ripWidth } = spot;
  const rip = units === 'in' ? formatInches(ripWidth) : formatMm(ripWidth);
  const board = layer === 'show' ? 'show board' : 'under board';
  return `strip ${strip}, ${board}, face ${faceUp} up, ${endFirst(turned)}, rip to ${rip}`;
}
