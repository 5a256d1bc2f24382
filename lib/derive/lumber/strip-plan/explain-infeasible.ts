import type { Board } from '../../../model/records.ts';
import type { Mm } from '../../../units/mm.ts';
import { blankWidth, canServe, usableWidth } from './strip-model.ts';
import type { StripPin, StripProblem } from './strip-problem.ts';
import { planStrips } from './strip-search.ts';

/** The least change of one kind that makes a plan possible. */
export interface StripMend {
  readonly change:
    | 'board thicker'
    | 'board wider'
    | 'top narrower'
    | 'top thinner on the center line'
    | 'one strip more'
    | 'one strip less'
    | 'without the pins'
    | 'seam off the center line';
  /** mm, where the change has a size. */
  readonly by?: Mm;
  readonly mark?: string;
}

/** Why there is no plan, by how much, and what would mend it. */
export interface StripShortage {
  readonly what: 'boards too few' | 'width' | 'thickness' | 'pins' | 'seam' | 'least width';
  /** How much there is, and how much is wanted: boards, or mm. */
  readonly value: number;
  readonly wanted: number;
  readonly mends: readonly StripMend[];
  /** Of several pinned boards, those that would each have to be left open by themselves; absent when pins are not what fails. */
  readonly freed?: readonly string[];
}

/** Changes are tried in sixteenths of an inch for thickness, in half inches for width. */
const SIXTEENTH = 25.4 / 16;
const HALF_INCH = 12.7;
const MOST_STEPS = 16;
/** Work for one try (tried: decides nearly all piles of 24 boards). */
const TRY_WORK = 120_000;

/** A search that stops for a moment after every stretch of work. */
type Steps<T> = Generator<void, T>;

/** Looks for what is missing; undefined when a plan is found after all. A try that stays undecided counts as no plan. */
export function explainInfeasible(problem: StripProblem): StripShortage | undefined {
  const steps = explainSteps(problem);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The same in steps, since many plans have to be tried. */
export function* explainSteps(problem: StripProblem): Steps<StripShortage | undefined> {
  if (yield* hasPlan(problem)) return undefined;
  const { settings, boards, pins = [] } = problem;
  const serving = boards.filter((board) => canServe(board, problem));
  const layers = settings.layers === 'two' ? 2 : 1;
  const mends = yield* mendsOf(problem);
  const wanted = layers * settings.strips;
  if (serving.length < wanted) return { what: 'boards too few', value: serving.length, wanted, mends };
  const blank = blankWidth(problem);
  const narrowest = settings.strips * settings.leastWidth;
  if (narrowest > blank) return { what: 'least width', value: blank, wanted: narrowest, mends };
  const most = widest(serving, problem, layers);
  if (most < blank) return { what: 'width', value: most, wanted: blank, mends };
  const does = (change: StripMend['change']): boolean => mends.some((mend) => mend.change === change);
  if (does('without the pins')) {
    return { what: 'pins', value: pins.length, wanted: 0, mends, freed: yield* freedPins(problem, pins) };
  }
  if (does('seam off the center line')) return { what: 'seam', value: 0, wanted: 1, mends };
  const center = problem.centerThickness;
  return { what: 'thickness', value: center - (yield* thinnerBy(problem)), wanted: center, mends };
}

/** Pins without any one of which there is a plan. */
function* freedPins(problem: StripProblem, pins: readonly StripPin[]): Steps<string[]> {
  const freed: string[] = [];
  for (const { mark } of pins) {
    if (yield* hasPlan({ ...problem, pins: pins.filter((pin) => pin.mark !== mark) })) freed.push(mark);
  }
  return freed;
}

/** mm that the widest strips can cover: wide boards on wide boards. */
function widest(boards: readonly Board[], problem: StripProblem, layers: number): number {
  const widths = boards.map((board) => usableWidth(board, problem)).sort((a, b) => b - a);
  let sum = 0;
  for (let k = 0; k < problem.settings.strips; k++) sum += widths[layers * k + layers - 1]!;
  return sum;
}

/** Any plan: what it costs does not matter. */
function* hasPlan(problem: StripProblem): Steps<boolean> {
  const search = planStrips(problem);
  let status = search.status;
  while (!status.plan && !status.done && status.work < TRY_WORK) {
    status = search.advance(2_000);
    yield;
  }
  return status.plan !== undefined;
}

const withSettings = (problem: StripProblem, settings: Partial<StripProblem['settings']>): StripProblem => ({
  ...problem,
  settings: { ...problem.settings, ...settings },
});

/** The least step that makes a plan possible; undefined when none of the steps does. */
function* leastStep(step: Mm, changed: (by: Mm) => StripProblem | undefined): Steps<Mm | undefined> {
  function* serves(count: number): Steps<boolean> {
    const problem = changed(count * step);
    return problem !== undefined && (yield* hasPlan(problem));
  }
  if (!(yield* serves(MOST_STEPS))) return undefined;
  let [none, some] = [0, MOST_STEPS];
  while (some - none > 1) {
    const middle = (none + some) >> 1;
    if (yield* serves(middle)) some = middle;
    else none = middle;
  }
  return some * step;
}

const thinner = (problem: StripProblem) => (by: Mm) =>
  problem.centerThickness - by < problem.edgeThickness
    ? undefined
    : { ...problem, centerThickness: problem.centerThickness - by };

function* thinnerBy(problem: StripProblem): Steps<Mm> {
  return (yield* leastStep(SIXTEENTH / 4, thinner(problem))) ?? MOST_STEPS * SIXTEENTH;
}

function* mendsOf(problem: StripProblem): Steps<StripMend[]> {
  const { settings, pins = [] } = problem;
  const mends: StripMend[] = [];
  const add = (change: StripMend['change'], by?: Mm, mark?: string): void =>
    void mends.push({ change, ...(by === undefined ? {} : { by }), ...(mark === undefined ? {} : { mark }) });
  if (pins.length > 0 && (yield* hasPlan({ ...problem, pins: [] }))) add('without the pins');
  if (settings.seamOnCenterLine && (yield* hasPlan(withSettings(problem, { seamOnCenterLine: false })))) {
    add('seam off the center line');
  }
  for (const [change, strips] of [
    ['one strip more', settings.strips + 1],
    ['one strip less', settings.strips - 1],
  ] as const) {
    if (strips > 0 && (yield* hasPlan(withSettings(problem, { strips })))) add(change);
  }
  const thin = yield* leastStep(SIXTEENTH, thinner(problem));
  if (thin !== undefined) add('top thinner on the center line', thin);
  const narrow = yield* leastStep(HALF_INCH, (by) =>
    by < problem.width ? { ...problem, width: problem.width - by } : undefined,
  );
  if (narrow !== undefined) add('top narrower', narrow);
  for (const change of ['board thicker', 'board wider'] as const) {
    const found = yield* oneBoard(problem, change);
    if (found) add(change, found.by, found.mark);
  }
  return mends;
}

/**
 * The board that needs the least change by itself; of boards that need as much, the first by mark. A board for which the greatest
 * change does not do needs no smaller one tried.
 */
function* oneBoard(
  problem: StripProblem,
  change: 'board thicker' | 'board wider',
): Steps<{ by: Mm; mark: string } | undefined> {
  const step = SIXTEENTH * (change === 'board wider' ? 4 : 1);
  let marks = problem.boards.map(({ mark }) => mark).sort((a, b) => (a < b ? -1 : 1));
  let found: { by: Mm; mark: string } | undefined;
  for (const count of [4, 2, 1]) {
    const by = count * step;
    const serving: string[] = [];
    for (const mark of marks) if (yield* hasPlan(changed(problem, mark, change, by))) serving.push(mark);
    if (serving.length === 0) return found;
    found = { by, mark: serving[0]! };
    marks = serving;
  }
  return found;
}

const changed = (
  problem: StripProblem,
  mark: string,
  change: 'board thicker' | 'board wider',
  by: Mm,
): StripProblem => ({
  ...problem,
  boards: problem.boards.map((board) => {
    if (board.mark !== mark) return board;
    return change === 'board thicker'
      ? { ...board, thickness: board.thickness + by }
      : { ...board, width: board.width + by };
  }),
});
