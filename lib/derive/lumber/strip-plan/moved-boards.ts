import type { Mm } from '../../../units/mm.ts';
import type { BoardPlace, StripPlan } from './strip-plan.ts';
import type { StripLayer } from './strip-problem.ts';

/** Where a board lies in a plan, and how. */
export interface BoardSpot {
  /** From the left edge, the first is 1. */
  readonly strip: number;
  readonly layer: StripLayer;
  readonly faceUp: 'A' | 'B';
  readonly turned: boolean;
  /** mm, what its strip is ripped to. */
  readonly ripWidth: Mm;
}

/** A board that lies otherwise than before. */
export interface MovedBoard {
  readonly mark: string;
  /** Undefined when it is left over. */
  readonly before?: BoardSpot;
  readonly after?: BoardSpot;
}

/** Saw settings that differ by less are one, mm: 1/64 in (our convention). */
const SAME_RIP: Mm = 25.4 / 64;

/** The boards that change their strip, layer, face, end or saw setting, or come in or fall out, by mark. */
export function movedBoards(before: StripPlan, after: StripPlan): MovedBoard[] {
  const [were, are] = [spotsOf(before), spotsOf(after)];
  const marks = [...new Set([...were.keys(), ...are.keys()])].sort((a, b) => (a < b ? -1 : 1));
  return marks.flatMap((mark) => {
    const [was, is] = [were.get(mark), are.get(mark)];
    if (was && is && sameSpot(was, is)) return [];
    return [{ mark, ...(was ? { before: was } : {}), ...(is ? { after: is } : {}) }];
  });
}

const sameSpot = (a: BoardSpot, b: BoardSpot): boolean =>
  a.strip === b.strip &&
  a.layer === b.layer &&
  a.faceUp === b.faceUp &&
  a.turned === b.turned &&
  Math.abs(a.ripWidth - b.ripWidth) < SAME_RIP;

function spotsOf({ strips }: StripPlan): Map<string, BoardSpot> {
  const spots = new Map<string, BoardSpot>();
  strips.forEach(({ show, bottom, ripWidth }, j) => {
    const put = ({ mark, faceUp, turned }: BoardPlace, layer: StripLayer): void =>
      void spots.set(mark, { strip: j + 1, layer, faceUp, turned, ripWidth });
    put(show, 'show');
    if (bottom) put(bottom, 'bottom');
  });
  return spots;
}
