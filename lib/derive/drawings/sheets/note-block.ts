import { type Block, block } from '../../../drawing/block.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import { linesWithin } from '../../../drawing/fit-text.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { Paper } from '../../../drawing/paper.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';

/** A word in bold and what there is to say under it. */
export interface Note {
  readonly head: string;
  readonly text: string;
}

/** From line to line and from note to note, in capital heights: common practice, no source. */
const LEADING = 1.7;
const APART = 2.3;

/** Room for the heads, in capital heights; our convention. */
const HEADS = 8.8;

/** On a letter sheet notes may be small; heights of ISO 3098-1, paper mm. */
export const noteHeights = ({ width }: Paper): readonly Mm[] => (width < 300 ? [2.5, 1.8] : [2.5]);

/** Notes below each other, heads in a column of their own; `width` in paper mm, the upper left corner is the origin. */
export function noteBlock(notes: readonly Note[], width: Mm, style: Style, height: Mm = style.textHeight): Block {
  const { scale } = style;
  const column = HEADS * height;
  const entities: Entity[] = [];
  let y = -height;
  const put = (text: string, x: Mm, bold: boolean): void => {
    entities.push({
      kind: 'text',
      layer: LAYERS.TEXT,
      text,
      at: [x * scale, y * scale],
      height,
      ...(bold ? { bold } : {}),
    });
  };
  for (const { head, text } of notes) {
    put(head, 0, true);
    linesWithin(text, width - column, height).forEach((line, k) => {
      if (k > 0) y -= LEADING * height;
      put(line, column, false);
    });
    y -= APART * height;
  }
  return block(entities, style);
}
