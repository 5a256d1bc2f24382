import type { Board, Defect } from '../../../model/records.ts';
import type { Mm } from '../../../units/mm.ts';
import type { BoardPlace, StripPlace } from './strip-plan.ts';
import type { StripProblem } from './strip-problem.ts';

/**
 * dm² of defects on the finished underside of a board as a plan lays it, from the problem alone; `top` mm is the depth of the
 * board's upper face below the finished show face. Each defect is cut into slices across, between the places where
 * anything changes; a slice counts when the underside runs within the defect at its middle.
 */
export function undersideShown(
  problem: StripProblem,
  strip: StripPlace,
  board: Board,
  place: BoardPlace,
  top: Mm,
): number {
  const first = place.turned ? board.length - problem.length - place.startsAt : place.startsAt;
  let mm2 = 0;
  for (const defect of board.defects) {
    const along = Math.min(defect.to, first + problem.length) - Math.max(defect.from, first);
    if (along > 0)
      mm2 +=
        along *
        widthCut(problem, strip, acrossTop(problem, strip, board, place, defect), depthsIn(board, place, defect, top));
  }
  return mm2 / 10_000;
}

/** mm from the center line to both sides of a defect: the board is ripped on its outer side, over the center line on both. */
export function acrossTop(
  { settings }: StripProblem,
  { from, to }: StripPlace,
  board: Board,
  place: BoardPlace,
  defect: Defect,
): [Mm, Mm] {
  const onLeft = from >= -1e-6 ? 0 : to <= 1e-6 ? place.ripOff : place.ripOff / 2;
  const edge = from - settings.jointing - onLeft;
  const mirrored = (place.faceUp === 'A') === place.turned;
  return mirrored
    ? [edge + board.width - defect.far, edge + board.width - defect.near]
    : [edge + defect.near, edge + defect.far];
}

function depthsIn(board: Board, place: BoardPlace, { face, depth }: Defect, top: Mm): [Mm, Mm] {
  const bottom = top + board.thickness;
  if (face === 'through') return [top, bottom];
  const deep = Math.min(depth, board.thickness);
  return face === place.faceUp ? [top, top + deep] : [bottom - deep, bottom];
}

/** mm of a defect, within its strip, at which the underside lies between two depths. */
function widthCut(problem: StripProblem, strip: StripPlace, [a, b]: [Mm, Mm], [least, most]: [Mm, Mm]): Mm {
  const falls = (problem.centerThickness - problem.edgeThickness) / (problem.width / 2);
  const [from, to] = [Math.max(a, strip.from), Math.min(b, strip.to)];
  const turns =
    falls === 0 ? [] : [least, most].flatMap((z) => [1, -1].map((s) => (s * (problem.centerThickness - z)) / falls));
  const stops = [from, ...[0, ...turns].filter((x) => x > from && x < to).sort((x, y) => x - y), to];
  let width = 0;
  for (let k = 1; k < stops.length; k++) {
    const middle = (stops[k]! + stops[k - 1]!) / 2;
    const underside = problem.centerThickness - falls * Math.abs(middle);
    if (underside > least && underside < most) width += Math.max(0, stops[k]! - stops[k - 1]!);
  }
  return width;
}
