import type { Board } from '../../../model/records.ts';
import type { Mm } from '../../../units/mm.ts';
import { blankWidth, canServe, usableWidth } from './strip-model.ts';
import type { StripPlan } from './strip-plan.ts';
import type { StripProblem } from './strip-problem.ts';
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
}

/** Changes are tried in sixteenths of an inch for thickness, in half inches for width. */
const SIXTEENTH = 25.4 / 16;
const HALF_INCH = 12.7;
const MOST_STEPS = 16;
/** Work for one try (tried: decides nearly all piles of 24 boards). */
const TRY_WORK = 60_000;

/** Looks for what is missing; undefined when a plan is found after all. A try that stays undecided counts as no plan. */
export function explainInfeasible(problem: StripProblem): StripShortage | undefined {
  if (firstPlan(problem)) return undefined;
  const { settings, boards, pins = [] } = problem;
  const serving = boards.filter((board) => canServe(board, problem));
  const layers = settings.layers === 'two' ? 2 : 1;
  const mends = mendsOf(problem);
  const wanted = layers * settings.strips;
  if (serving.length < wanted) return { what: 'boards too few', value: serving.length, wanted, mends };
  const blank = blankWidth(problem);
  const narrowest = settings.strips * settings.leastWidth;
  if (narrowest > blank) return { what: 'least width', value: blank, wanted: narrowest, mends };
  const most = widest(serving, problem, layers);
  if (most < blank) return { what: 'width', value: most, wanted: blank, mends };
  if (pins.length > 0 && firstPlan({ ...problem, pins: [] }))
    return { what: 'pins', value: pins.length, wanted: 0, mends };
  if (settings.seamOnCenterLine && firstPlan(withSettings(problem, { seamOnCenterLine: false }))) {
    return { what: 'seam', value: 0, wanted: 1, mends };
  }
  const center = problem.centerThickness;
  return { what: 'thickness', value: center - thinnerBy(problem), wanted: center, mends };
}

/** mm that the widest strips can cover: wide boards on wide boards. */
function widest(boards: readonly Board[], problem: StripProblem, layers: number): number {
  const widths = boards.map((board) => usableWidth(board, problem)).sort((a, b) => b - a);
  let sum = 0;
  for (let k = 0; k < problem.settings.strips; k++) sum += widths[layers * k + layers - 1]!;
  return sum;
}

/** Any plan: what it costs does not matter. */
function firstPlan(problem: StripProblem): StripPlan | undefined {
  const search = planStrips(problem);
  let status = search.status;
  while (!status.plan && !status.done && status.work < TRY_WORK) status = search.advance(2_000);
  return status.plan;
}

const withSettings = (problem: StripProblem, settings: Partial<StripProblem['settings']>): StripProblem => ({
  ...problem,
  settings: { ...problem.settings, ...settings },
});

/** The least step that makes a plan possible; undefined when none of the steps does. */
function leastStep(step: Mm, changed: (by: Mm) => StripProblem | undefined): Mm | undefined {
  const serves = (count: number): boolean => {
    const problem = changed(count * step);
    return problem !== undefined && firstPlan(problem) !== undefined;
  };
  if (!serves(MOST_STEPS)) return undefined;
  let [none, some] = [0, MOST_STEPS];
  while (some - none > 1) {
    const middle = (none + some) >> 1;
    if (serves(middle)) some = middle;
    else none = middle;
  }
  return some * step;
}

const thinner = (problem: StripProblem) => (by: Mm) =>
  problem.centerThickness - by < problem.edgeThickness
    ? undefined
    : { ...problem, centerThickness: problem.centerThickness - by };

const thinnerBy = (problem: StripProblem): Mm => leastStep(SIXTEENTH / 4, thinner(problem)) ?? MOST_STEPS * SIXTEENTH;

function mendsOf(problem: StripProblem): StripMend[] {
  const { settings, pins = [] } = problem;
  const mends: StripMend[] = [];
  const add = (change: StripMend['change'], by?: Mm, mark?: string): void =>
    void mends.push({ change, ...(by === undefined ? {} : { by }), ...(mark === undefined ? {} : { mark }) });
  if (pins.length > 0 && firstPlan({ ...problem, pins: [] })) add('without the pins');
  if (settings.seamOnCenterLine && firstPlan(withSettings(problem, { seamOnCenterLine: false }))) {
    add('seam off the center line');
  }
  if (firstPlan(withSettings(problem, { strips: settings.strips + 1 }))) add('one strip more');
  if (settings.strips > 1 && firstPlan(withSettings(problem, { strips: settings.strips - 1 }))) add('one strip less');
  const thin = leastStep(SIXTEENTH, thinner(problem));
  if (thin !== undefined) add('top thinner on the center line', thin);
  const narrow = leastStep(HALF_INCH, (by) =>
    by < problem.width ? { ...problem, width: problem.width - by } : undefined,
  );
  if (narrow !== undefined) add('top narrower', narrow);
  for (const change of ['board thicker', 'board wider'] as const) {
    const found = oneBoard(problem, change);
    if (found) add(change, found.by, found.mark);
  }
  return mends;
}

/** The board that needs the least change by itself; of boards that need as much, the first by mark. */
function oneBoard(
  problem: StripProblem,
  change: 'board thicker' | 'board wider',
): { by: Mm; mark: string } | undefined {
  const marks = problem.boards.map(({ mark }) => mark).sort((a, b) => (a < b ? -1 : 1));
  for (const steps of [1, 2, 4]) {
    for (const mark of marks) {
      const by = steps * SIXTEENTH * (change === 'board wider' ? 4 : 1);
      if (firstPlan(changed(problem, mark, change, by))) return { by, mark };
    }
  }
  return undefined;
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
