import type { Mm } from '../../units/mm.ts';
import { seeded } from './strip-plan/seeded.ts';
import { type DrawnBoard, drawBoard, type YardPile } from './yard-pile.ts';

/** Pieces of one size to be cut. */
export interface PieceNeed {
  readonly pieces: number;
  readonly width: Mm;
  readonly length: Mm;
}

/** Board feet that were enough in so many of 100 visits. */
export interface Enough {
  readonly in50: number;
  readonly in80: number;
  readonly in95: number;
}

/** Visits that are made up, and the seed they are drawn with: our convention. */
const VISITS = 100;
const SEED = 1;

/** More boards than this are not bought for one class; then the pile cannot give the pieces. */
const MOST = 300;

/**
 * Board feet that are enough: boards are drawn from the pile one by one until all pieces can be cut from them, many times
 * over. The plan is a coarse one: rip, crosscut, trim, widest and longest first. Undefined when the pile cannot give them.
 */
export function yardVisits(needs: readonly PieceNeed[], pile: YardPile, kerf: Mm, visits = VISITS): Enough | undefined {
  const chance = seeded(SEED);
  const bought: number[] = [];
  for (let visit = 0; visit < visits; visit++) {
    const feet = visitOnce(needs, pile, kerf, chance);
    if (feet === undefined) return undefined;
    bought.push(feet);
  }
  bought.sort((a, b) => a - b);
  const at = (share: number): number => bought[Math.ceil(share * visits) - 1]!;
  return { in50: at(0.5), in80: at(0.8), in95: at(0.95) };
}

/** What fits but for so little fits, mm (our convention). */
const SAME: Mm = 1e-6;

type Open = { width: Mm; length: Mm };

function visitOnce(needs: readonly PieceNeed[], pile: YardPile, kerf: Mm, chance: () => number): number | undefined {
  const open = needs
    .flatMap(({ pieces, width, length }) => Array.from({ length: pieces }, (): Open => ({ width, length })))
    .sort((a, b) => b.width - a.width || b.length - a.length);
  let feet = 0;
  for (let count = 0; open.length > 0; count++) {
    if (count === MOST) return undefined;
    const board = drawBoard(pile, chance);
    // A board that gives nothing is left at the yard.
    if (cutFrom(board, open, kerf) > 0) feet += board.boardFeet;
  }
  return feet;
}

/** Cuts what it can out of a board and takes it off the list; answers how many pieces. */
function cutFrom({ width, length }: DrawnBoard, open: Open[], kerf: Mm): number {
  let cut = 0;
  let left = width;
  for (;;) {
    const first = open.findIndex((piece) => piece.width <= left + SAME && piece.length <= length + SAME);
    if (first < 0) return cut;
    const lane = open[first]!.width;
    cut += fillLane(lane, length, open, kerf);
    left -= lane + kerf;
  }
}

/** Fills a strip of one width, the widest and longest pieces first. */
function fillLane(lane: Mm, length: Mm, open: Open[], kerf: Mm): number {
  let cut = 0;
  for (let rest = length; ; cut++) {
    const at = open.findIndex((piece) => piece.width <= lane + SAME && piece.length <= rest + SAME);
    if (at < 0) return cut;
    rest -= open.splice(at, 1)[0]!.length + kerf;
  }
}
