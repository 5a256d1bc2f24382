import type { CutKind, SawCut } from './cut-plan.ts';
import type { Grid } from './grid.ts';
import type { Pattern, Spot } from './pattern.ts';

/** A piece on the bench, in steps: from x0 up to x1 along the board, y0 up to y1 across. */
export interface Piece {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** A pattern as work at the saws. */
export interface Sawing {
  /** In order; positions in steps. */
  readonly cuts: readonly SawCut[];
  /** What lies there in the end and is no part. */
  readonly rests: readonly Piece[];
}

/** Pieces and cuts while a board is cut up. */
interface Bench {
  readonly kerf: number;
  readonly cuts: SawCut[];
  readonly pieces: Piece[];
  readonly rests: Set<number>;
}

/** A stretch to be kept, and what becomes of it. */
interface Wanted<T> {
  readonly from: number;
  readonly to: number;
  readonly what: T;
}

/**
 * The cuts of a board in the order of the shop: all cuts through the whole board, then lane by lane the cuts across the
 * lanes, last the trimming cuts, those to one size together, so that the fence stays.
 */
export function sawCuts(grid: Grid, pattern: Pattern): Sawing {
  const { length, width } = grid.boards[pattern.board]!;
  const bench: Bench = {
    kerf: grid.kerf,
    cuts: [],
    pieces: [{ x0: 0, x1: length, y0: 0, y1: width }],
    rests: new Set(),
  };
  const rip = pattern.first === 'rip';
  const second: CutKind = rip ? 'crosscut' : 'rip';
  const lanes = pattern.lanes.map((lane) => ({ ...lane, what: spotsIn(pattern, lane.from) }));
  const used = lanes.filter((lane) => lane.what.length > 0);
  const trims: { piece: number; spot: Spot }[] = [];
  for (const { piece, what } of slice(bench, 0, pattern.first, used)) {
    const wanted = what.map((spot) => {
      const { length: l, width: w } = grid.parts[spot.part]!;
      return rip ? { from: spot.x, to: spot.x + l, what: spot } : { from: spot.y, to: spot.y + w, what: spot };
    });
    wanted.sort((a, b) => a.from - b.from);
    for (const part of slice(bench, piece, second, wanted)) trims.push({ piece: part.piece, spot: part.what });
  }
  const depth = ({ spot }: { spot: Spot }): number =>
    rip ? grid.parts[spot.part]!.width : grid.parts[spot.part]!.length;
  trims.sort((a, b) => depth(a) - depth(b));
  for (const trim of trims) {
    const from = rip ? trim.spot.y : trim.spot.x;
    slice(bench, trim.piece, pattern.first, [{ from, to: from + depth(trim), what: trim.spot }]);
  }
  return { cuts: bench.cuts, rests: [...bench.rests].map((n) => bench.pieces[n]!) };
}

function spotsIn({ first, spots }: Pattern, from: number): Spot[] {
  return spots.filter((s) => (first === 'rip' ? s.y : s.x) === from);
}

/** Cuts the wanted stretches out of a piece, from the datum on; returns the pieces that hold them. */
function slice<T>(bench: Bench, piece: number, kind: CutKind, wanted: readonly Wanted<T>[]) {
  const kept: { piece: number; what: T }[] = [];
  let rest: number | undefined = piece;
  for (const { from, to, what } of wanted) {
    if (rest === undefined) throw new RangeError(`nothing is left of piece ${piece} at ${from}`);
    if (from > startOf(bench.pieces[rest]!, kind)) {
      const { keeps, leaves } = saw(bench, rest, kind, from - bench.kerf);
      if (keeps !== undefined) bench.rests.add(keeps);
      rest = leaves!;
    }
    if (to === endOf(bench.pieces[rest]!, kind)) {
      kept.push({ piece: rest, what });
      rest = undefined;
    } else {
      const { keeps, leaves } = saw(bench, rest, kind, to);
      kept.push({ piece: keeps!, what });
      rest = leaves;
    }
  }
  if (rest !== undefined) bench.rests.add(rest);
  return kept;
}

const startOf = (p: Piece, kind: CutKind): number => (kind === 'rip' ? p.y0 : p.x0);
const endOf = (p: Piece, kind: CutKind): number => (kind === 'rip' ? p.y1 : p.x1);

/** One cut: the blade takes from `at` to `at` + kerf. */
function saw({ cuts, pieces, kerf }: Bench, piece: number, kind: CutKind, at: number): SawCut {
  const whole = pieces[piece]!;
  const add = (part: Piece): number => pieces.push(part) - 1;
  const near = kind === 'rip' ? { ...whole, y1: at } : { ...whole, x1: at };
  const far = kind === 'rip' ? { ...whole, y0: at + kerf } : { ...whole, x0: at + kerf };
  const cut: SawCut = {
    kind,
    piece,
    at,
    stop: Math.max(0, at - startOf(whole, kind)),
    ...(at > startOf(whole, kind) ? { keeps: add(near) } : {}),
    ...(at + kerf < endOf(whole, kind) ? { leaves: add(far) } : {}),
  };
  cuts.push(cut);
  return cut;
}
