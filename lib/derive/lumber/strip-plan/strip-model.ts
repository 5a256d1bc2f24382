import type { Board } from '../../../model/records.ts';
import type { Taper } from './cut-across.ts';
import { type Stretches, shownArea, startsOf, stretchesOf } from './defect-areas.ts';
import { FLIPS, type Flip, faceUp } from './faces.ts';
import { type Lying, lyingOf } from './lying.ts';
import { litres, type Prices, pricesOf } from './prices.ts';
import type { StripPin, StripProblem } from './strip-problem.ts';

/** How one board may be used; what the maker pinned leaves less. */
export interface BoardUse {
  readonly show: boolean;
  readonly bottom: boolean;
  readonly idle: boolean;
  /** Strips it may lie in, bit 0 the leftmost. */
  readonly strips: number;
  readonly flips: readonly Flip[];
  readonly turns: readonly boolean[];
}

/** A problem as numbers: boards sorted by mark, so that their order in the file changes nothing. Lengths in mm. */
export interface StripModel {
  readonly problem: StripProblem;
  readonly boards: readonly Board[];
  readonly uses: readonly BoardUse[];
  readonly strips: number;
  /** Half of the glued blank across. */
  readonly half: number;
  readonly slope: number;
  /** What a stack must have over the center line for a reserve of 0. */
  readonly base: number;
  readonly prices: Prices;
  readonly width: Float64Array;
  readonly thick: Float64Array;
  readonly tone: Float64Array;
  /** Cost of using a board as show board with a side up, two numbers a board; Infinity where it may not. */
  readonly showCost: Float64Array;
  /** Where the top begins on a show board, two numbers a board. */
  readonly showStart: Float64Array;
  /** dm² shown, two numbers a board. */
  readonly shown: Float64Array;
  /** Litres as they count. */
  readonly litres: Float64Array;
  /** Where the top may begin on a bottom board. */
  readonly stretches: readonly Stretches[];
  /** Where it begins on a show board, two a board. */
  readonly showStretches: readonly Stretches[];
  /** The ways in which each board may lie. */
  readonly lying: readonly (readonly Lying[])[];
  readonly taper: Taper;
  /** Room for a number a defect of any one board. */
  readonly cuts: Float64Array;
  /** Cost of using a board below. */
  readonly bottomCost: Float64Array;
  /** Mirror images are equal: nothing is pinned to a strip or to an end. */
  readonly mirrors: boolean;
}

/** mm across that the glued blank must have: the top, the cut that opens it, the jointing of that cut and both trims. */
export function blankWidth(problem: StripProblem): number {
  const { kerf, jointing, edgeTrim, seamOnCenterLine } = problem.settings;
  const opened = seamOnCenterLine ? 0 : kerf + 2 * jointing;
  return problem.width + opened + 2 * edgeTrim;
}

/** mm of a board that reach into the glued blank. */
export const usableWidth = (board: Board, problem: StripProblem): number => board.width - 2 * problem.settings.jointing;

/** Tone of a board that nobody judged: in the middle (our convention). */
const UNKNOWN_TONE = 0.5;

/** Long enough, and wide enough for the narrowest strip. */
export const canServe = (board: Board, problem: StripProblem): boolean =>
  board.length >= problem.length && usableWidth(board, problem) >= problem.settings.leastWidth;

/** Strips are kept as bits of a number. */
const MOST_STRIPS = 31;

/** Compiles a problem; boards that can serve nowhere are left out. */
export function stripModel(problem: StripProblem): StripModel {
  const { settings } = problem;
  if (settings.strips > MOST_STRIPS)
    throw new RangeError(`${settings.strips} strips: at most ${MOST_STRIPS} are planned`);
  const pins = new Map((problem.pins ?? []).map((pin) => [pin.mark, pin]));
  const boards = problem.boards
    .filter((board) => canServe(board, problem))
    .sort((a, b) => (a.mark < b.mark ? -1 : a.mark > b.mark ? 1 : 0));
  const prices = pricesOf(problem);
  const uses = boards.map((board) => useOf(board, problem, pins.get(board.mark)));
  const volumes = Float64Array.from(boards, (b) => prices.counted('volume', litres(b, settings)));
  const n = boards.length;
  const slope = (problem.centerThickness - problem.edgeThickness) / (problem.width / 2);
  const model = {
    problem,
    boards,
    uses,
    strips: settings.strips,
    half: blankWidth(problem) / 2,
    slope,
    base: problem.centerThickness + settings.cleanUp,
    prices,
    width: Float64Array.from(boards, (b) => usableWidth(b, problem)),
    thick: Float64Array.from(boards, (b) => b.thickness),
    tone: Float64Array.from(boards, (b) => prices.counted('tone', b.tone ?? UNKNOWN_TONE)),
    showCost: new Float64Array(2 * n).fill(Number.POSITIVE_INFINITY),
    showStart: new Float64Array(2 * n),
    shown: new Float64Array(2 * n),
    litres: volumes,
    stretches: boards.map((b) => stretchesOf(b, problem.length, startsOf(b, problem.length))),
    showStretches: new Array<Stretches>(2 * n).fill({ starts: [], lengths: new Float64Array(0) }),
    lying: boards.map((board, i) => waysToLie(board, uses[i]!, problem)),
    taper: { center: problem.centerThickness, slope },
    cuts: new Float64Array(Math.max(0, ...boards.map((b) => b.defects.length))),
    bottomCost: volumes.map((volume) => prices.of.volume * volume),
    mirrors: uses.every((use) => use.turns.length === 2) && (problem.pins ?? []).every((p) => p.strip === undefined),
  };
  for (let i = 0; i < n; i++) for (const flip of uses[i]!.flips) priceShow(model, i, flip);
  return model;
}

function waysToLie(board: Board, { flips, turns }: BoardUse, problem: StripProblem): Lying[] {
  const { jointing } = problem.settings;
  return flips.flatMap((flip) =>
    turns.map((turned) => lyingOf(board, usableWidth(board, problem), jointing, flip, turned)),
  );
}

function priceShow(model: StripModel & { showStretches: Stretches[] }, i: number, flip: Flip): void {
  const { problem, prices } = model;
  const board = model.boards[i]!;
  const at = 2 * i + flip;
  model.shown[at] = Number.POSITIVE_INFINITY;
  for (const start of startsOf(board, problem.length)) {
    const area = shownArea(board, faceUp(board, flip), start, problem.length, problem.settings.cleanUp / 2);
    if (area >= model.shown[at]! - 1e-12) continue;
    model.shown[at] = area;
    model.showStart[at] = start;
  }
  model.showStretches[at] = stretchesOf(board, problem.length, [model.showStart[at]!]);
  if (!model.uses[i]!.show) return;
  model.showCost[at] = prices.of.shownDefects * prices.counted('shownDefects', model.shown[at]!) + model.bottomCost[i]!;
}

function useOf(board: Board, problem: StripProblem, pin: StripPin | undefined): BoardUse {
  const { strips, layers } = problem.settings;
  const flips = FLIPS.filter((flip) => pin?.faceUp === undefined || faceUp(board, flip) === pin.faceUp);
  return {
    show: pin?.layer !== 'bottom',
    bottom: pin?.layer !== 'show' && layers !== 'one',
    idle: pin === undefined,
    strips: pin?.strip === undefined ? 2 ** strips - 1 : 2 ** (pin.strip - 1),
    flips,
    turns: pin?.turned === undefined ? [false, true] : [pin.turned],
  };
}
