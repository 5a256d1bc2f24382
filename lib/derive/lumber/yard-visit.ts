import type { Mm } from '../../units/mm.ts';
import type { CutKind } from './cut-plan/cut-plan.ts';
import { cutFromRack, keepRest, type Rest, takeLong } from './rest-rack.ts';
import type { DrawnBoard } from './yard-pile.ts';
import type { ClassWanted, PieceNeed, StripCover, YardSaw } from './yard-wanted.ts';

/** One way to cut the parts: which come first, and how each is freed. */
export interface CutWay {
  readonly first: CutKind;
  readonly by: (piece: Rest) => number;
}

/** The boards of a pile in the order in which they come to hand. */
export type Boards = (n: number) => DrawnBoard;

/** Boards looked at before one is taken, the others are left at the yard (our convention). */
const AT_HAND = 3;

/** So many looks in a row that give nothing: the pile cannot give it. */
const MOST_IN_VAIN = 100;

/** Openings narrower than this are closed, mm (our convention). */
const CLOSED: Mm = 1e-6;

/** The pile at hand while one class is bought. */
interface Buying {
  readonly rack: Rest[];
  readonly next: () => DrawnBoard;
  feet: number;
}

/**
 * Board feet of each class that one visit needs; undefined where the pile cannot give it.
 *
 * @param wanted thickest class first: what is left of its boards goes on to the next.
 */
export function visitOnce(
  wanted: readonly ClassWanted[],
  saw: YardSaw,
  way: CutWay,
  boards: readonly Boards[],
): (number | undefined)[] {
  const rack: Rest[] = [];
  return wanted.map(({ pile, cover, parts }, c) => {
    if (parts.some(({ width, length }) => width > pile.width[1] || length > pile.length[1])) return undefined;
    let drawn = 0;
    const buying: Buying = { rack, next: () => boards[c]!(drawn++), feet: 0 };
    const covered = !cover || coverStrips(buying, cover, saw);
    return covered && cutParts(buying, parts, saw.kerf, way) ? buying.feet : undefined;
  });
}

/** Takes the board of those at hand that gives most for its board feet; undefined when none in many looks gives anything. */
function takeBoard(buying: Buying, gives: (board: DrawnBoard) => number): DrawnBoard | undefined {
  for (let look = 0; look < MOST_IN_VAIN; look++) {
    let best: DrawnBoard | undefined;
    let most = 0;
    for (let n = 0; n < AT_HAND; n++) {
      const board = buying.next();
      const given = gives(board) / board.boardFeet;
      if (given > most) [best, most] = [board, given];
    }
    if (!best) continue;
    buying.feet += best.boardFeet;
    return best;
  }
  return undefined;
}

/** Buys boards until the strips cover their width. */
function coverStrips(buying: Buying, cover: StripCover, saw: YardSaw): boolean {
  const { rack } = buying;
  let open = cover.width;
  // A thicker board may lie on where a thinner one would do.
  while (open > CLOSED) {
    const rest = takeLong(rack, cover.length);
    if (!rest) break;
    const used = Math.min(open, rest.width);
    open -= used;
    keepRest(rack, rest.width - used - saw.kerf, rest.length);
  }
  const covers = ({ width, length }: DrawnBoard): Mm => (length < cover.length ? 0 : coveredBy(width, cover.lost, saw));
  while (open > CLOSED) {
    const board = takeBoard(buying, (one) => Math.min(open, covers(one)));
    if (!board) return false;
    const used = Math.min(open, covers(board));
    open -= used;
    keepRest(rack, covers(board) - used - saw.kerf, cover.length);
    keepRest(rack, board.width, board.length - cover.length - saw.kerf);
  }
  return true;
}

/** mm that a board covers, ripped into as few strips as may be; 0 when they would be too narrow. */
function coveredBy(width: Mm, lost: Mm, { kerf, widest, narrowest }: YardSaw): Mm {
  const strips = Math.max(1, Math.ceil((width + kerf) / (widest + kerf) - CLOSED));
  const each = (width + kerf) / strips - kerf;
  return each < narrowest ? 0 : strips * (each - lost);
}

/** Cuts the parts from what lies in the rack, and buys a board whenever one does not come out of it. */
function cutParts(buying: Buying, parts: readonly PieceNeed[], kerf: Mm, { first, by }: CutWay): boolean {
  const order = parts.flatMap((part) => Array.from({ length: part.pieces }, () => part)).sort((a, b) => by(b) - by(a));
  for (const [n, part] of order.entries()) {
    if (cutFromRack(buying.rack, part, first, kerf)) continue;
    const board = takeBoard(buying, (one) => areaOutOf(one, order.slice(n), first, kerf));
    if (!board) return false;
    buying.rack.push({ width: board.width, length: board.length });
    cutFromRack(buying.rack, part, first, kerf);
  }
  return true;
}

/** Area of the parts that come out of a board, the first of them among them; else 0. */
function areaOutOf({ width, length }: DrawnBoard, [must, ...more]: readonly Rest[], first: CutKind, kerf: Mm): number {
  const rack: Rest[] = [{ width, length }];
  if (!cutFromRack(rack, must!, first, kerf)) return 0;
  return more
    .filter((part) => cutFromRack(rack, part, first, kerf))
    .reduce((sum, part) => sum + part.width * part.length, must!.width * must!.length);
}
