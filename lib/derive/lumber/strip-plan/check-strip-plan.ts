import type { Board } from '../../../model/records.ts';
import type { Mm } from '../../../units/mm.ts';
import { acrossTop, undersideShown } from './check-underside.ts';
import type { BoardPlace, StripPlace, StripPlan } from './strip-plan.ts';
import type { StripProblem } from './strip-problem.ts';

/** Something that a plan gets wrong, with the figures. */
export interface PlanFault {
  readonly what:
    | 'unknown board'
    | 'board used twice'
    | 'board too short'
    | 'strip wider than its board'
    | 'strip too narrow'
    | 'gap or overlap'
    | 'blank not covered'
    | 'stack too thin'
    | 'figure of reserve'
    | 'figure of defects'
    | 'seam off the center line'
    | 'half too narrow'
    | 'rip width'
    | 'pin not kept'
    | 'layers';
  /** The strip, the first is 1; 0 for the whole plan. */
  readonly strip: number;
  readonly value: number;
  readonly limit: number;
  readonly mark?: string;
}

/** Figures may differ by rounding, mm and dm². */
const SAME = 1e-6;

/**
 * Goes over a finished plan board by board, from the problem alone: it shares nothing with the search. Widths, thickness at the
 * inner edge of every strip, the defects on both faces, marks and pins.
 */
export function checkStripPlan(problem: StripProblem, plan: StripPlan): PlanFault[] {
  const faults: PlanFault[] = [];
  const boards = new Map(problem.boards.map((board) => [board.mark, board]));
  const used = new Set<string>();
  plan.strips.forEach((strip, index) => {
    for (const place of placesOf(strip)) {
      const add = (what: PlanFault['what'], value: number, limit: number): void =>
        void faults.push({ what, strip: index + 1, value, limit, mark: place.mark });
      if (used.has(place.mark)) add('board used twice', 2, 1);
      used.add(place.mark);
      checkBoard(problem, boards, strip, place, add);
    }
    faults.push(...stripFaults(problem, strip, index + 1, boards));
  });
  return [...faults, ...rowFaults(problem, plan), ...pinFaults(problem, plan)];
}

const placesOf = (strip: StripPlace): BoardPlace[] => [strip.show, ...(strip.bottom ? [strip.bottom] : [])];

type Add = (what: PlanFault['what'], value: number, limit: number) => void;

function checkBoard(
  problem: StripProblem,
  boards: ReadonlyMap<string, Board>,
  strip: StripPlace,
  place: BoardPlace,
  add: Add,
): void {
  const board = boards.get(place.mark);
  if (board === undefined) {
    add('unknown board', 0, 1);
    return;
  }
  if (place.startsAt < -SAME || place.startsAt + problem.length > board.length + SAME) {
    add('board too short', board.length - place.startsAt, problem.length);
  }
  if (strip.ripWidth > board.width + SAME) add('strip wider than its board', strip.ripWidth, board.width);
  const show = boards.get(strip.show.mark);
  const skim = problem.settings.cleanUp / 2;
  const top = (place === strip.show ? 0 : (show?.thickness ?? 0)) - skim;
  const under = undersideShown(problem, strip, board, place, top);
  if (Math.abs(under - place.undersideDefects) > SAME) add('figure of defects', place.undersideDefects, under);
  if (place !== strip.show) return;
  const shown = shownOn(problem, strip, board, place);
  if (Math.abs(shown - place.shownDefects) > SAME) add('figure of defects', place.shownDefects, shown);
}

/** dm² of defects that lie within the strip, on the face that is up, deeper than half of the clean-up. */
function shownOn(problem: StripProblem, strip: StripPlace, board: Board, place: BoardPlace): number {
  const first = place.turned ? board.length - problem.length - place.startsAt : place.startsAt;
  let mm2 = 0;
  for (const defect of board.defects) {
    const { from, to, depth, face } = defect;
    if (face !== 'through' && face !== place.faceUp) continue;
    if (depth <= problem.settings.cleanUp / 2) continue;
    const [begin, end] = [Math.max(from, first), Math.min(to, first + problem.length)];
    const [left, right] = acrossTop(problem, strip, board, place, defect);
    const wide = Math.min(right, strip.to) - Math.max(left, strip.from);
    if (end > begin && wide > 0) mm2 += (end - begin) * wide;
  }
  return mm2 / 10_000;
}

/** mm of thickness that the top wants at a distance from the center line, clean-up included. */
export function thicknessWanted(problem: StripProblem, across: Mm): Mm {
  const falls = (problem.centerThickness - problem.edgeThickness) / (problem.width / 2);
  return problem.centerThickness + problem.settings.cleanUp - falls * Math.abs(across);
}

function stripFaults(
  problem: StripProblem,
  strip: StripPlace,
  number: number,
  boards: ReadonlyMap<string, Board>,
): PlanFault[] {
  const { settings } = problem;
  const faults: PlanFault[] = [];
  const add: Add = (what, value, limit) => void faults.push({ what, strip: number, value, limit });
  const net = strip.to - strip.from;
  if (net < settings.leastWidth - SAME) add('strip too narrow', net, settings.leastWidth);
  if (Math.abs(net + 2 * settings.jointing - strip.ripWidth) > SAME) add('rip width', strip.ripWidth, net);
  const stack = placesOf(strip).reduce((sum, { mark }) => sum + (boards.get(mark)?.thickness ?? 0), 0);
  const over = strip.from <= 0 && strip.to >= 0;
  const halves = [-strip.from, strip.to].filter((half) => over && half > SAME);
  const half = Math.min(...halves);
  if (halves.length === 2 && half < settings.leastHalf - 2 * SAME) add('half too narrow', half, settings.leastHalf);
  const wanted = thicknessWanted(problem, over ? 0 : Math.min(Math.abs(strip.from), Math.abs(strip.to)));
  if (stack < wanted - SAME) add('stack too thin', stack, wanted);
  if (Math.abs(strip.reserve - (stack - wanted)) > SAME) add('figure of reserve', strip.reserve, stack - wanted);
  const layers = placesOf(strip).length;
  if (settings.layers !== 'either' && layers !== (settings.layers === 'one' ? 1 : 2)) add('layers', layers, 1);
  return faults;
}

function rowFaults(problem: StripProblem, { strips, reserve }: StripPlan): PlanFault[] {
  const { kerf, jointing, edgeTrim, seamOnCenterLine } = problem.settings;
  const faults: PlanFault[] = [];
  const add = (what: PlanFault['what'], strip: number, value: number, limit: number): void =>
    void faults.push({ what, strip, value, limit });
  const blank = problem.width + 2 * edgeTrim + (seamOnCenterLine ? 0 : kerf + 2 * jointing);
  const covered = strips.at(-1)!.to - strips[0]!.from;
  if (Math.abs(covered - blank) > SAME || Math.abs(strips[0]!.from + blank / 2) > SAME) {
    add('blank not covered', 0, covered, blank);
  }
  if (strips.length !== problem.settings.strips) add('blank not covered', 0, strips.length, problem.settings.strips);
  strips.slice(1).forEach(({ from }, j) => {
    const before = strips[j]!.to;
    if (Math.abs(from - before) > SAME) add('gap or overlap', j + 2, from, before);
  });
  const nearest = Math.min(...strips.map(({ from }) => Math.abs(from)));
  if (seamOnCenterLine && nearest > SAME) add('seam off the center line', 0, nearest, 0);
  const least = Math.min(...strips.map((strip) => strip.reserve));
  if (Math.abs(least - reserve) > SAME) add('figure of reserve', 0, reserve, least);
  return faults;
}

function pinFaults(problem: StripProblem, plan: StripPlan): PlanFault[] {
  return (problem.pins ?? []).flatMap((pin): PlanFault[] => {
    const strip = plan.strips.findIndex((s) => placesOf(s).some(({ mark }) => mark === pin.mark));
    const found = strip < 0 ? undefined : plan.strips[strip]!;
    const place = found && placesOf(found).find(({ mark }) => mark === pin.mark);
    const kept =
      place !== undefined &&
      (pin.strip ?? strip + 1) === strip + 1 &&
      (pin.faceUp ?? place.faceUp) === place.faceUp &&
      (pin.turned ?? place.turned) === place.turned &&
      (pin.layer === undefined || (pin.layer === 'show') === (place === found?.show));
    return kept ? [] : [{ what: 'pin not kept', strip: strip + 1, value: 0, limit: 1, mark: pin.mark }];
  });
}
