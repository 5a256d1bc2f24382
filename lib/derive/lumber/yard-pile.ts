import { boardFeetNominal } from '../../units/board-feet.ts';
import type { Mm } from '../../units/mm.ts';
import { GRADES, type GradeId } from '../../wood/grades.ts';

/** What boards at the yard are like: sizes between two ends, and the share of their length that is clear. */
export interface YardPile {
  /** mm, rough. */
  readonly thickness: Mm;
  readonly width: readonly [Mm, Mm];
  readonly length: readonly [Mm, Mm];
  /** 0 to 1, on average. */
  readonly clear: number;
}

/** Widths and lengths run from the least of the grade to so much more, 4 in and 4 ft: our convention. */
const WIDER: Mm = 101.6;
const LONGER: Mm = 1219.2;

/** Clear share where a grade does not say it (our convention: that of the best grade). */
const CLEAR = 250 / 3;

/** Boards of a grade and thickness. */
export function pileOf(id: GradeId, nominal: Mm): YardPile {
  const { leastBoard, clearPercent } = GRADES.find((grade) => grade.id === id)!;
  const { width, length } = leastBoard.value;
  return {
    thickness: nominal,
    width: [width, width + WIDER],
    length: [length, length + LONGER],
    clear: (clearPercent?.value ?? CLEAR) / 100,
  };
}

/** What of a drawn board is clear, and what is paid for it. */
export interface DrawnBoard {
  readonly width: Mm;
  readonly length: Mm;
  /** As it is sold, flaws and all. */
  readonly boardFeet: number;
}

/**
 * Draws a board: even sizes, and a flaw at one end or along one edge, where whoever picks boards wants it; from nothing to
 * twice its average.
 */
function drawBoard({ thickness, width, length, clear }: YardPile, chance: () => number): DrawnBoard {
  const between = ([low, high]: readonly [Mm, Mm]): Mm => low + (high - low) * chance();
  const wide = between(width);
  const long = between(length);
  const rest = Math.max(0, 1 - 2 * (1 - clear) * chance());
  const atEnd = chance() < 0.5;
  return {
    width: atEnd ? wide : wide * rest,
    length: atEnd ? long * rest : long,
    boardFeet: boardFeetNominal(thickness, wide, long),
  };
}

/** Boards of a pile one by one; asked again for the same number, the same board. */
export function boardsOf(pile: YardPile, chance: () => number): (n: number) => DrawnBoard {
  const drawn: DrawnBoard[] = [];
  return (n) => {
    while (drawn.length <= n) drawn.push(drawBoard(pile, chance));
    return drawn[n]!;
  };
}
