import type { Mm } from '../../units/mm.ts';
import type { YardPile } from './yard-pile.ts';

/** Clear boards alike that a number of blanks come out of. */
export interface BoardsThatDo {
  readonly count: number;
  /** mm, clear. */
  readonly width: Mm;
  readonly length: Mm;
  /** Larger than boards of the grade come. */
  readonly beyond?: true;
}

/** Blanks of one size. */
export interface Blanks {
  readonly pieces: number;
  readonly width: Mm;
  readonly length: Mm;
  /** All of them out of one board. */
  readonly together: boolean;
}

/** mm: what fits but for so little fits (our convention). */
const SAME: Mm = 1e-6;

/** So many choices are told (our convention). */
const CHOICES = 2;

interface Layout extends BoardsThatDo {
  readonly area: number;
}

/**
 * Which boards would do, the fewest first, then the least area: blanks lie in lanes side by side and end to end, a kerf
 * between them, in boards no larger than those of the pile; where these are too small, the smallest there can be.
 */
export function boardsThatDo(
  blanks: Blanks,
  kerf: Mm,
  { width, length }: Pick<YardPile, 'width' | 'length'>,
): BoardsThatDo[] {
  const all = layouts(blanks, kerf);
  const within = all.filter((board) => board.width <= width[1] + SAME && board.length <= length[1] + SAME);
  const told = ({ count, width: wide, length: long }: Layout): BoardsThatDo => ({ count, width: wide, length: long });
  if (within.length > 0) {
    return within
      .sort((a, b) => a.count - b.count || a.area - b.area)
      .slice(0, CHOICES)
      .map(told);
  }
  const smallest = all.reduce((best, board) => (board.area * best.count < best.area * board.count ? board : best));
  return [{ ...told(smallest), beyond: true }];
}

/** Lanes and rows of one board, as many as are used. */
function layouts({ pieces, width, length, together }: Blanks, kerf: Mm): Layout[] {
  const found: Layout[] = [];
  for (let lanes = 1; lanes <= pieces; lanes++) {
    const most = Math.ceil(pieces / lanes);
    for (let rows = 1; rows <= most; rows++) {
      const count = Math.ceil(pieces / (lanes * rows));
      if (together && count > 1) continue;
      // As many boards, each smaller, come out of fewer rows or lanes.
      if (Math.ceil(pieces / ((lanes - 1) * rows)) === count || Math.ceil(pieces / (lanes * (rows - 1))) === count)
        continue;
      const [wide, long] = [lanes * width + (lanes - 1) * kerf, rows * length + (rows - 1) * kerf];
      found.push({ count, width: wide, length: long, area: count * wide * long });
    }
  }
  return found;
}
