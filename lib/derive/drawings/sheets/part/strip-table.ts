import type { Block } from '../../../../drawing/block.ts';
import type { Style } from '../../../../drawing/style.ts';
import type { Part } from '../../../../model/part.ts';
import type { Mm } from '../../../../units/mm.ts';
import { sayLength } from '../say-length.ts';
import { tableBlock } from '../table-block.ts';
import { exact } from './exact.ts';
import { sliceThickness } from './slice-thickness.ts';
import { taperLook } from './taper-look.ts';

/**
 * What is left of each strip once the glued top is tapered, in the numbers of the views beside it; undefined for parts that are no
 * strips.
 */
export function stripTable(parts: readonly Part[], height: Mm, style: Style): Block | undefined {
  const strips = parts.flatMap(({ body, mark, finished }) =>
    body.kind === 'slice' ? [{ body, mark, thickness: finished.thickness }] : [],
  );
  if (strips.length === 0) return undefined;
  const say = (mm: Mm): string => sayLength(exact(mm), taperLook(style.lengths));
  return tableBlock(
    [
      { head: 'mark' },
      { head: 'finished thickness', align: 'right' },
      { head: 'at its left edge', align: 'right' },
      { head: 'at its right edge', align: 'right' },
    ],
    strips.map(({ body, mark, thickness }) => [
      mark,
      say(thickness),
      say(sliceThickness(body, body.from)),
      say(sliceThickness(body, body.to)),
    ]),
    height,
    style,
  );
}
