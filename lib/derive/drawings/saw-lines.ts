import type { Mm } from '../../units/mm.ts';
import type { BoardPlan, CutKind } from '../lumber/cut-plan/cut-plan.ts';

/** A piece on the bench: mm along the board and across. */
interface Piece {
  readonly x: readonly [from: Mm, to: Mm];
  readonly y: readonly [from: Mm, to: Mm];
}

/** One cut as a line on the board: where the near side of the blade runs, and how far. */
export interface SawLine {
  /** From 1, in the order of the saw. */
  readonly number: number;
  readonly kind: CutKind;
  /** mm from the reference end (crosscut) or the reference edge (rip). */
  readonly at: Mm;
  /** mm, the stretch that is cut, along the line. */
  readonly from: Mm;
  readonly to: Mm;
  /** mm, the far end of the piece on the near side minus its start: room for lettering before the blade. */
  readonly room: Mm;
}

/** The cuts of a board as lines on it, each as long as the piece that it goes through. */
export function sawLines({ cuts }: BoardPlan, { length, width }: { length: Mm; width: Mm }, kerf: Mm): SawLine[] {
  const pieces: Piece[] = [{ x: [0, length], y: [0, width] }];
  return cuts.map(({ kind, piece, at, keeps, leaves }, n) => {
    const whole = pieces[piece]!;
    const [cutAcross, cutAlong] = kind === 'rip' ? (['y', 'x'] as const) : (['x', 'y'] as const);
    const [start, end] = whole[cutAcross];
    if (keeps !== undefined) pieces[keeps] = { ...whole, [cutAcross]: [start, at] };
    if (leaves !== undefined) pieces[leaves] = { ...whole, [cutAcross]: [at + kerf, end] };
    const [from, to] = whole[cutAlong];
    return { number: n + 1, kind, at, from, to, room: at - start };
  });
}
