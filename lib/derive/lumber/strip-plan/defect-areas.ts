import type { Board, Defect } from '../../../model/records.ts';
import { MM2_PER_DM2 } from './prices.ts';

/** A stretch of a board, mm from its reference end, that a length of the top is cut from. */
const overlap = (a0: number, a1: number, b0: number, b1: number): number =>
  Math.max(0, Math.min(a1, b1) - Math.max(a0, b0));

const liesOn = (defect: Defect, face: 'A' | 'B'): boolean => defect.face === 'through' || defect.face === face;

/**
 * Places where the top may begin on a board so that no other place shows less: the area is linear between them. From the
 * reference end of the board; the middle comes first, so that it wins ties.
 */
export function startsOf(board: Board, length: number): number[] {
  const spare = board.length - length;
  const turns = board.defects.flatMap((d) => [d.from, d.to, d.from - length, d.to - length]);
  return [spare / 2, 0, spare, ...turns.filter((start) => start > 0 && start < spare)];
}

/** dm² of defects on a face that reach deeper than the skim which planing takes off it. */
export function shownArea(board: Board, face: 'A' | 'B', start: number, length: number, skim: number): number {
  let area = 0;
  for (const d of board.defects) {
    if (!liesOn(d, face) || d.depth <= skim) continue;
    area += overlap(d.from, d.to, start, start + length) * (d.far - d.near);
  }
  return area / MM2_PER_DM2;
}

/** The finished underside: depth below the show face on the center line, and what it loses a mm outwards. */
export interface Taper {
  readonly center: number;
  readonly slope: number;
}

/** Where a board lies in the top: depths of its two faces below the finished show face, and across. */
export interface Lie {
  readonly faceUp: 'A' | 'B';
  readonly top: number;
  readonly bottom: number;
  /** mm from the center line to the board's reference edge; the board grows from there to the right (1) or left (-1). */
  readonly edge: number;
  readonly toward: 1 | -1;
  /** mm across, the strip that is left of it. */
  readonly from: number;
  readonly to: number;
  /** mm from the board's reference end. */
  readonly start: number;
  readonly length: number;
}

/**
 * dm² of defects that the finished underside cuts through: a defect fills the depths from its face inwards, and shows where
 * the taper leaves the underside within them.
 */
export function undersideArea(board: Board, lie: Lie, taper: Taper): number {
  let area = 0;
  for (const d of board.defects) {
    const long = overlap(d.from, d.to, lie.start, lie.start + lie.length);
    if (long === 0) continue;
    const a = lie.edge + lie.toward * d.near;
    const b = lie.edge + lie.toward * d.far;
    const x0 = Math.max(lie.from, Math.min(a, b));
    const x1 = Math.min(lie.to, Math.max(a, b));
    if (x1 > x0) area += long * cutAcross(depths(d, lie), x0, x1, taper);
  }
  return area / MM2_PER_DM2;
}

function depths(defect: Defect, lie: Lie): readonly [number, number] {
  if (defect.face === 'through') return [lie.top, lie.bottom];
  const deep = Math.min(defect.depth, lie.bottom - lie.top);
  return defect.face === lie.faceUp ? [lie.top, lie.top + deep] : [lie.bottom - deep, lie.bottom];
}

/** mm of [x0, x1] where the underside lies between two depths. */
function cutAcross([least, most]: readonly [number, number], x0: number, x1: number, taper: Taper): number {
  if (taper.slope === 0) return least < taper.center && taper.center < most ? x1 - x0 : 0;
  const near = Math.max(0, (taper.center - most) / taper.slope);
  const far = (taper.center - least) / taper.slope;
  if (far <= near) return 0;
  return overlap(x0, x1, near, far) + overlap(x0, x1, -far, -near);
}
