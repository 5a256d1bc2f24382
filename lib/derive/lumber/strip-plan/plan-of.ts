import { overlap, shownArea } from './defect-areas.ts';
import { FLIPS, faceUp } from './faces.ts';
import type { Judged } from './judge.ts';
import type { StripModel } from './strip-model.ts';
import type { BoardPlace, StripPlace, StripPlan } from './strip-plan.ts';
import { type Laid, layBottom, layShow, leftRip } from './underside-cost.ts';

/** The plan of a judged arrangement, in the maker's words. */
export function planOf(model: StripModel, judged: Judged): StripPlan {
  const { shows, bottoms } = judged.arrangement;
  const used = new Set([...shows, ...bottoms].filter((i) => i >= 0).map((i) => model.boards[i]!.mark));
  const marks = model.problem.boards.map((b) => b.mark).sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  return {
    strips: shows.map((_, j) => stripOf(model, judged, j)),
    reserve: judged.reserve,
    terms: judged.terms,
    value: judged.value,
    unused: marks.filter((mark) => !used.has(mark)),
  };
}

function stripOf(model: StripModel, judged: Judged, j: number): StripPlace {
  const { arrangement, seams, flips } = judged;
  const show = arrangement.shows[j]!;
  const bottom = arrangement.bottoms[j]!;
  const [from, to] = [seams[j]!, seams[j + 1]!];
  const below = layBottom(model, arrangement, seams, j);
  const laid = layShow(model, arrangement, seams, j, flips[j]!);
  return {
    from,
    to,
    ripWidth: to - from + 2 * model.problem.settings.jointing,
    thickness: model.thick[show]! + (bottom < 0 ? 0 : model.thick[bottom]!),
    reserve: judged.reserves[j]!,
    show: boardPlace(model, show, laid, shownWithin(model, show, laid, from, to)),
    ...(below === undefined ? {} : { bottom: boardPlace(model, bottom, below, 0) }),
  };
}

/** dm² of defects that show on a board between the seams of its strip. */
function shownWithin(model: StripModel, i: number, { flip, turned, start }: Laid, from: number, to: number): number {
  const { length, settings } = model.problem;
  const board = model.boards[i]!;
  const { near, far } = model.lying[i]!.find((way) => way.flip === flip && way.turned === turned)!;
  const left = from - leftRip(from, to, model.width[i]! - (to - from));
  const wide = (k: number): number => overlap(left + near[k]!, left + far[k]!, from, to);
  return shownArea(board, faceUp(board, flip), start, length, settings.cleanUp / 2, wide);
}

function boardPlace(model: StripModel, i: number, laid: Laid, shownDefects: number): BoardPlace {
  const board = model.boards[i]!;
  const spare = board.length - model.problem.length;
  return {
    mark: board.mark,
    faceUp: faceUp(board, laid.flip),
    barkUp: laid.flip === FLIPS[0],
    turned: laid.turned,
    startsAt: laid.turned ? spare - laid.start : laid.start,
    ripOff: laid.ripOff,
    shownDefects,
    undersideDefects: laid.area,
  };
}
