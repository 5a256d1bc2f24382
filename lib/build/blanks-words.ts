import { marksText } from '../derive/cut-list/building-order.ts';
import type { BlanksWanted } from '../derive/lumber/blanks-wanted.ts';
import type { BoardsThatDo } from '../derive/lumber/boards-that-do.ts';
import { formatLength, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';

/** What to buy for parts that are left over, a sentence for each size. */
export const blanksWords = (wanted: readonly BlanksWanted[], units: UnitSystem): string[] =>
  wanted.map((one) => {
    const { marks, pieces, width, length } = one;
    const blanks = `${pieces} clear ${pieces === 1 ? 'blank' : 'blanks'} ${sizeWords(width, length, units)}`;
    const lumber = one.lumber ? ` of ${one.lumber}` : ', thicker than the yard has it';
    return `for ${marksText(marks)}: ${blanks}${lumber}; ${boardsWords(one, units)}`;
  });

/** What these come out of. */
export function boardsWords({ boards }: BlanksWanted, units: UnitSystem): string {
  const choices = boards.map(
    (board, k) => `${k > 0 ? 'or ' : ''}${countWords(board)} ${sizeWords(board.width, board.length, units)}`,
  );
  const beyond = boards.some((board) => board.beyond) ? ', larger than boards of the grade come' : '';
  return `${choices.join(', ')}, clear, would do${beyond}`;
}

const countWords = ({ count }: BoardsThatDo): string => (count === 1 ? 'one board' : `${count} boards`);

/** Up to the next 1/16 in or mm, as lumber is measured. */
function sizeWords(width: Mm, length: Mm, units: UnitSystem): string {
  const [wide, long] = [width, length].map((mm) => formatLength(mm, units, 'up', 16));
  return `${wide} x ${long}`;
}
