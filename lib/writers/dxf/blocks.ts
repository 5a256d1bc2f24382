import type { Handles } from './handles.ts';
import type { Tag } from './tags.ts';

/** A block of the file: a space, or the picture of a dimension. */
export interface Block {
  readonly name: string;
  /** Handle of its block record. */
  readonly record: string;
  /** Handle of its layout, `0` for the picture of a dimension. */
  readonly layout: string;
  readonly entities: readonly Tag[];
}

/** A block with what is in it. Pictures of dimensions are anonymous (flag 1); the content of spaces stands elsewhere. */
export function blockTags(block: Block, handles: Handles): readonly Tag[] {
  return [
    [0, 'BLOCK'],
    [5, handles.next()],
    [330, block.record],
    [100, 'AcDbEntity'],
    [8, '0'],
    [100, 'AcDbBlockBegin'],
    [2, block.name],
    [70, block.layout === '0' ? 1 : 0],
    [10, 0],
    [20, 0],
    [30, 0],
    [3, block.name],
    [1, ''],
    ...block.entities,
    [0, 'ENDBLK'],
    [5, handles.next()],
    [330, block.record],
    [100, 'AcDbEntity'],
    [8, '0'],
    [100, 'AcDbBlockEnd'],
  ];
}
