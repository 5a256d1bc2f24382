import type { Shop } from '../../shop/shop.ts';
import type { Mm } from '../../units/mm.ts';
import type { GlueUp } from './glued-boards.ts';

/** One round of gluing: so many pieces become fewer and wider ones. */
export interface GlueStage {
  readonly from: number;
  readonly to: number;
  /** Most joints that are closed at once. */
  readonly joints: number;
  /** mm of the widest piece that comes out. */
  readonly width: Mm;
}

/** How a panel is glued up in rounds that fit the planer, the glue and one pair of hands. */
export interface GluePlan {
  readonly stages: readonly GlueStage[];
  /** Boards in the widest part that still goes through the planer, and its width as glued, mm; 0 when no board does. */
  readonly planed: { readonly boards: number; readonly width: Mm; readonly parts: number };
  /** Most joints that the open time allows at once; 0 when not even one. */
  readonly atOnce: number;
}

/** Share of the stated open time that a plan may use: common practice, no source. */
export const OPEN_SHARE = 0.7;

/** Long joints that one person closes at once: 2 to 3, common practice, no source. */
export const HANDS_FULL = 3;

/** Rounding. */
const SAME = 1e-9;

/** A piece on its way to the panel: boards side by side; `half` is the side of the center line it lies on. */
interface Piece {
  readonly boards: number;
  readonly width: Mm;
  readonly half: -1 | 0 | 1;
}

export const jointsAtOnce = ({ gluing }: Shop): number =>
  Math.min(HANDS_FULL, Math.floor((OPEN_SHARE * gluing.openTime) / gluing.perJoint + SAME));

/**
 * First parts that still go through the planer, then even groups up to each half, the joint on the center line last.
 *
 * @param trim mm that a part is wider than its boards together, until it is trimmed.
 */
export function gluePlan(panel: GlueUp, shop: Shop, trim: Mm): GluePlan {
  const atOnce = jointsAtOnce(shop);
  const most = Math.max(1, atOnce) + 1;
  const boards = piecesOf(panel);
  const parts = parted(boards, most, shop.machines.planerWidth - trim);
  const widest = parts.reduce((a, b) => (b.width > a.width ? b : a));
  const fits = widest.width + trim <= shop.machines.planerWidth + SAME;
  const stages: GlueStage[] = [];
  let now = parts;
  if (parts.length < boards.length) stages.push(stage(boards, parts));
  while (now.length > 1) {
    const next = gathered(now, most);
    stages.push(stage(now, next));
    now = next;
  }
  const planed = {
    boards: fits ? Math.max(...parts.map((p) => p.boards)) : 0,
    width: widest.width,
    parts: parts.length,
  };
  return { stages, planed, atOnce };
}

/** The boards; those of a panel with a seam in its middle belong to one half or the other. */
function piecesOf({ boards, width }: GlueUp): Piece[] {
  let at = -width / 2;
  const spans = boards.map((b) => {
    const from = at;
    at += b.width;
    return { width: b.width, from, to: at };
  });
  const seam = spans.some((s) => Math.abs(s.to) < SEAM);
  return spans.map((s) => ({ boards: 1, width: s.width, half: seam ? (s.to < SEAM ? -1 : 1) : 0 }));
}

/** A joint this close to the middle lies on it, mm. */
const SEAM: Mm = 0.01;

/** From the outer edges inwards, as many boards together as the planer and the glue allow. */
function parted(boards: readonly Piece[], most: number, planer: Mm): Piece[] {
  const left = boards.filter((b) => b.half <= 0);
  const right = boards.filter((b) => b.half > 0).reverse();
  return [...filled(left, most, planer), ...filled(right, most, planer).reverse()];
}

function filled(boards: readonly Piece[], most: number, planer: Mm): Piece[] {
  const parts: Piece[] = [];
  for (const board of boards) {
    const last = parts.at(-1);
    if (last && last.boards < most && last.width + board.width <= planer + SAME)
      parts[parts.length - 1] = joined([last, board]);
    else parts.push(board);
  }
  return parts;
}

/** The next round: even groups within each half; once there is one piece a half, both together. */
function gathered(pieces: readonly Piece[], most: number): Piece[] {
  const halves = [pieces.filter((p) => p.half <= 0), pieces.filter((p) => p.half > 0)];
  if (halves.every((h) => h.length <= 1)) return [{ ...joined(pieces), half: 0 }];
  return halves.flatMap((half) => evenGroups(half, Math.ceil(half.length / most)).map(joined));
}

function evenGroups<T>(items: readonly T[], count: number): T[][] {
  return Array.from({ length: count }, (_, k) =>
    items.slice(Math.round((k * items.length) / count), Math.round(((k + 1) * items.length) / count)),
  );
}

const joined = (pieces: readonly Piece[]): Piece => ({
  boards: pieces.reduce((sum, p) => sum + p.boards, 0),
  width: pieces.reduce((sum, p) => sum + p.width, 0),
  half: pieces[0]!.half,
});

function stage(before: readonly Piece[], after: readonly Piece[]): GlueStage {
  let used = 0;
  const joints = after.map((piece) => {
    let count = 0;
    for (let boards = 0; boards < piece.boards; count++) {
      boards += before[used]!.boards;
      used += 1;
    }
    return count - 1;
  });
  return {
    from: before.length,
    to: after.length,
    joints: Math.max(...joints),
    width: Math.max(...after.map((p) => p.width)),
  };
}
