import { marksText } from '../derive/cut-list/building-order.ts';
import { formatNumber } from '../units/format-length.ts';
import type { KeptBoards } from './keep-boards.ts';
import { marksList } from './mark-order.ts';

/** Boards that the strips may not take, what for, and what that costs. */
export function keptWords({ boards, parts, dearer }: KeptBoards): string {
  const which = boards.length === 1 ? `board ${boards[0]} is kept` : `boards ${marksList(boards)} are kept`;
  const cost = dearer === undefined ? '' : `; without that the strips would cost ${formatNumber(dearer, 2)} less`;
  return `${which} for ${marksText(parts)}${cost}, and parts would have no wood`;
}
