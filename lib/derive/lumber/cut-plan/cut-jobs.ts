import type { Board } from '../../../model/records.ts';
import { boardFeet } from '../../../units/board-feet.ts';
import type { Mm } from '../../../units/mm.ts';
import type { SpeciesId } from '../../../wood/species-id.ts';
import { THICKNESS_CLASSES, type ThicknessClassId } from '../../../wood/thickness-classes.ts';
import type { CutList, CutListRow } from '../../cut-list/cut-list.ts';
import type { CutBoard, CutPart, CutProblem } from './cut-problem.ts';
import { shareBoards } from './share-boards.ts';

/** What of a cut list is planned, and how. */
export interface CutJobOptions {
  /** mm. */
  readonly kerf: Mm;
  /** mm, the step of the rule; default that of `CutProblem`. */
  readonly step?: Mm;
  readonly keep?: CutProblem['keep'];
  readonly seed?: number;
  /** The wood of the boards: rows of other woods are left out. Default: that of the first row that is planned. */
  readonly wood?: SpeciesId;
  /** Rows cut from something else, the strips of a top for one. */
  readonly without?: (row: CutListRow) => boolean;
  /** A word for rows whose pieces should come from one board, if any. */
  readonly together?: (row: CutListRow) => string | undefined;
  /** Marks of boards that are spoken for. */
  readonly spoken?: readonly string[];
}

/** The parts of one thickness class, and of thinner ones that have no boards of their own, and what they may be cut from. */
export interface CutJob {
  readonly wood: SpeciesId;
  readonly lumber: ThicknessClassId;
  /** What the cost of a board is counted in. */
  readonly costIn: 'money' | 'board feet';
  readonly problem: CutProblem;
}

/**
 * Cut problems of a cut list, thickest class first. A part is one piece and goes by its mark. Which boards serve which class:
 * `shareBoards`. Defects count on whichever face they lie. Boards cost their price when all boards of the job have one, else their net board feet.
 */
export function cutJobs(list: CutList, boards: readonly Board[], options: CutJobOptions): CutJob[] {
  const planned = list.rows.filter((row) => row.lumber && !options.without?.(row));
  const wood = options.wood ?? planned[0]?.wood;
  const rows = planned.filter((row) => row.wood === wood);
  const classes = THICKNESS_CLASSES.filter((c) => rows.some((row) => row.lumber === c.id)).reverse();
  const free = boards.filter((b) => !options.spoken?.includes(b.mark));
  const shares = shareBoards(
    rows,
    classes.map(({ id }) => id),
    free,
  );
  return shares.map(({ lumber, rows: own, boards: pile }): CutJob => {
    const money = pile.length > 0 && pile.every((b) => b.price !== undefined && b.price > 0);
    return {
      wood: wood!,
      lumber,
      costIn: money ? 'money' : 'board feet',
      problem: {
        parts: own.flatMap((row) => partsOf(row, options)),
        boards: pile.map((b) => boardOf(b, money)),
        kerf: options.kerf,
        ...(options.step === undefined ? {} : { step: options.step }),
        ...(options.keep === undefined ? {} : { keep: options.keep }),
        ...(options.seed === undefined ? {} : { seed: options.seed }),
      },
    };
  });
}

function partsOf(row: CutListRow, { together }: CutJobOptions): CutPart[] {
  const word = together?.(row);
  return row.marks.map((id) => ({
    id,
    length: row.rough.length,
    width: row.rough.width,
    count: 1,
    ...(word === undefined ? {} : { together: word }),
  }));
}

function boardOf({ mark, length, width, thickness, price, defects }: Board, money: boolean): CutBoard {
  return {
    id: mark,
    length,
    width,
    cost: money ? price! : boardFeet(length * width * thickness),
    avoid: defects.map(({ from, to, near, far }) => ({ from, to, near, far })),
  };
}
