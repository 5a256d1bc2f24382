import type { Board, Defect } from '../../model/records.ts';
import type { Mm } from '../../units/mm.ts';

/** A board as it came out of milling. */
export interface Milled {
  readonly mark: string;
  /** mm, the least. */
  readonly thickness: Mm;
}

/** The boards, those that were milled again at their new thickness. */
export const milledBoards = (boards: readonly Board[], milled: readonly Milled[]): Board[] =>
  boards.map((board) => {
    const found = milled.find(({ mark }) => mark === board.mark);
    return found ? milledTo(board, found.thickness) : board;
  });

/** It is not said from which face the wood came off: a defect stays as deep as it was, or goes through. */
function milledTo({ corners: _, ...board }: Board, thickness: Mm): Board {
  const defects = board.defects.map((defect): Defect => {
    const through = defect.face === 'through' || defect.depth >= thickness;
    return through ? { ...defect, face: 'through', depth: thickness } : defect;
  });
  const milledFrom = Math.max(thickness, board.milledFrom ?? board.thickness);
  return { ...board, thickness, milledFrom, defects };
}
