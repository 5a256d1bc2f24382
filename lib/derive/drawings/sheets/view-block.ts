import { type Block, block, widthOf } from '../../../drawing/block.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';

/**
 * Height of the name of a view, and its distance from the view; paper mm; 3.5 is of the series of ISO 3098-1, the
 * distance our convention.
 */
const NAME: Mm = 3.5;
const UNDER: Mm = 4;

/** A view with its dimensions, and its name below them. */
export function viewBlock(name: string, entities: readonly Entity[], style: Style): Block {
  const { scale } = style;
  const bare = block(entities, style);
  const at = [bare.box.min[0] + widthOf(bare) / 2, bare.box.min[1] - UNDER * scale] as const;
  const label: Entity = {
    kind: 'text',
    layer: LAYERS.TEXT,
    text: name,
    at,
    height: NAME,
    align: 'center',
    valign: 'top',
    bold: true,
  };
  return block([...entities, label], style);
}
