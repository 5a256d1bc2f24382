import type { Board, Defect } from '../../model/records.ts';
import type { Mm } from '../../units/mm.ts';
import { referenceEdgeLeft } from '../lumber/rip-side.ts';
import type { BoardPlace, StripPlace } from '../lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../lumber/strip-plan/strip-problem.ts';

/** A rectangle of the top: along from its reference end, across from the center line, left negative. */
export interface Patch {
  readonly what: string;
  readonly along: readonly [Mm, Mm];
  readonly across: readonly [Mm, Mm];
  /** On the face that looks up. */
  readonly shows: boolean;
}

/**
 * The defects of a board where they come to lie in the top, as far as they lie in it, seen from the reference end.
 */
export function defectPatches(
  board: Board,
  place: BoardPlace,
  strip: StripPlace,
  { length, settings }: StripProblem,
): Patch[] {
  const { faceUp, turned, startsAt } = place;
  const left = boardLeft(place, strip) - settings.jointing;
  const edgeLeft = referenceEdgeLeft(place);
  const alongOf = (d: Mm): Mm => (turned ? board.length - d : d) - startsAt;
  const acrossOf = (d: Mm): Mm => left + (edgeLeft ? d : board.width - d);
  return board.defects.flatMap((defect): Patch[] => {
    const along = within([alongOf(defect.from), alongOf(defect.to)], [0, length]);
    const across = within([acrossOf(defect.near), acrossOf(defect.far)], [strip.from, strip.to]);
    return along && across ? [{ what: defect.what, along, across, shows: showsUp(defect, faceUp) }] : [];
  });
}

const showsUp = ({ face }: Defect, faceUp: 'A' | 'B'): boolean => face === 'through' || face === faceUp;

/** Across, where the left side of the board lies before it is ripped: what is ripped off lies away from the center line. */
function boardLeft({ ripOff }: BoardPlace, { from, to }: StripPlace): Mm {
  if (to <= 0) return from - ripOff;
  return from >= 0 ? from : from - ripOff / 2;
}

function within([a, b]: readonly [Mm, Mm], [low, high]: readonly [Mm, Mm]): readonly [Mm, Mm] | undefined {
  const start = Math.max(Math.min(a, b), low);
  const end = Math.min(Math.max(a, b), high);
  return end > start ? [start, end] : undefined;
}
