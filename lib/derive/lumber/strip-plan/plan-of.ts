import { FLIPS, faceUp } from './faces.ts';
import type { Judged } from './judge.ts';
import type { StripModel } from './strip-model.ts';
import type { BoardPlace, StripPlace, StripPlan } from './strip-plan.ts';
import { type Laid, layBottom, layShow } from './underside-cost.ts';

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
  return {
    from,
    to,
    ripWidth: to - from + 2 * model.problem.settings.jointing,
    thickness: model.thick[show]! + (bottom < 0 ? 0 : model.thick[bottom]!),
    reserve: judged.reserves[j]!,
    show: boardPlace(model, show, layShow(model, arrangement, seams, j, flips[j]!), true),
    ...(below === undefined ? {} : { bottom: boardPlace(model, bottom, below, false) }),
  };
}

function boardPlace(model: StripModel, i: number, laid: Laid, shows: boolean): BoardPlace {
  const board = model.boards[i]!;
  const spare = board.length - model.problem.length;
  return {
    mark: board.mark,
    faceUp: faceUp(board, laid.flip),
    barkUp: laid.flip === FLIPS[0],
    turned: laid.turned,
    startsAt: laid.turned ? spare - laid.start : laid.start,
    ripOff: laid.ripOff,
    shownDefects: shows ? model.shown[2 * i + laid.flip]! : 0,
    undersideDefects: laid.area,
  };
}
