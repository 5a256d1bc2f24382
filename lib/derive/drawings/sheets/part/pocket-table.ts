import type { Block } from '../../../../drawing/block.ts';
import type { Style } from '../../../../drawing/style.ts';
import type { Mm } from '../../../../units/mm.ts';
import { tableBlock } from '../table-block.ts';
import type { LetteredPockets } from './pocket-letters.ts';

/** What each letter of the views means; undefined for a part without pockets. */
export function pocketTable(kinds: readonly LetteredPockets[], height: Mm, style: Style): Block | undefined {
  if (kinds.length === 0) return undefined;
  return tableBlock(
    [
      { head: '' },
      { head: 'number', align: 'right' },
      { head: 'what' },
      { head: 'size' },
      { head: 'depth' },
      { head: 'worked into' },
    ],
    kinds.map(({ letter, pockets, what, size, depth, where }) => [
      letter,
      `${pockets.length}`,
      what,
      size,
      depth,
      where,
    ]),
    height,
    style,
  );
}
