import type { BoardPlan, CutPlan, Offcut, PlacedPart, SawCut } from './cut-plan.ts';
import { type CutProblem, RULE_STEP } from './cut-problem.ts';

/** A piece that lies on the bench: mm along the board and across. */
interface Piece {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** mm: sums of steps differ by no more. */
const EXACT = 1e-6;

/** Pieces on the bench by number, and what went wrong so far. */
interface Bench {
  readonly pieces: Map<number, Piece>;
  readonly faults: string[];
  /** Number of the next piece. */
  next: number;
}

/** Makes the cuts of a board one by one and says what does not come out as planned: parts and offcuts. */
export function replayCuts({ boards, step = RULE_STEP }: CutProblem, { kerf }: CutPlan, plan: BoardPlan): string[] {
  const board = boards.find((b) => b.id === plan.board);
  if (!board) return [];
  const read = (mm: number): number => Math.floor(mm / step + EXACT) * step;
  const whole = { x0: 0, x1: read(board.length), y0: 0, y1: read(board.width) };
  const bench: Bench = { pieces: new Map([[0, whole]]), faults: [], next: 1 };
  plan.cuts.forEach((cut, n) => {
    makeCut(bench, cut, kerf, `cut ${n + 1} of ${plan.board}`);
  });
  const pieces = [...bench.pieces.values()];
  const lost = [...plan.placed, ...plan.offcuts].filter((place) => !comesOut(place, pieces));
  return [...bench.faults, ...lost.map((place) => `${nameOf(place)} does not come out of ${plan.board}`)];
}

function makeCut(bench: Bench, cut: SawCut, kerf: number, name: string): void {
  const piece = bench.pieces.get(cut.piece);
  if (!piece) {
    bench.faults.push(`${name}: piece ${cut.piece} is not there`);
    return;
  }
  bench.pieces.delete(cut.piece);
  const [near, far] = halves(piece, cut, kerf);
  const due = Math.max(0, cut.at - (cut.kind === 'rip' ? piece.y0 : piece.x0));
  if (Math.abs(cut.stop - due) > EXACT) bench.faults.push(`${name} stops at ${cut.stop} mm, and ${due} mm are there`);
  if (!near && !far) bench.faults.push(`${name} leaves nothing`);
  layDown(bench, near, cut.keeps, name);
  layDown(bench, far, cut.leaves, name);
}

/** A new piece gets the next number, and the plan must know it by that. */
function layDown(bench: Bench, half: Piece | undefined, number: number | undefined, name: string): void {
  const due = half ? bench.next : undefined;
  if (number !== due) bench.faults.push(`${name} makes piece ${due ?? 'none'}, not ${number ?? 'none'}`);
  if (half) bench.pieces.set(bench.next++, half);
}

/** What the blade leaves on either side; nothing thinner than the eye sees. */
function halves(piece: Piece, { kind, at }: SawCut, kerf: number): [Piece | undefined, Piece | undefined] {
  const [from, to] = kind === 'rip' ? [piece.y0, piece.y1] : [piece.x0, piece.x1];
  const near = kind === 'rip' ? { ...piece, y1: Math.min(to, at) } : { ...piece, x1: Math.min(to, at) };
  const far =
    kind === 'rip' ? { ...piece, y0: Math.max(from, at + kerf) } : { ...piece, x0: Math.max(from, at + kerf) };
  return [at > from + EXACT ? near : undefined, at + kerf < to - EXACT ? far : undefined];
}

const nameOf = (place: PlacedPart | Offcut): string => ('part' in place ? place.part : `offcut ${place.name}`);

function comesOut({ x, y, length, width }: PlacedPart | Offcut, pieces: readonly Piece[]): boolean {
  const near = (a: number, b: number): boolean => Math.abs(a - b) < EXACT;
  return pieces.some((p) => near(p.x0, x) && near(p.y0, y) && near(p.x1, x + length) && near(p.y1, y + width));
}
