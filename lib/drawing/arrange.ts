import { type Block, heightOf, moveBlock, widthOf } from './block.ts';
import type { Box } from './bounds.ts';
import type { Entity } from './drawing.ts';

/** Where a block goes beside another; its other coordinate is kept, so that views stay in line with each other. */
export const placeBlock = {
  above: (block: Block, of: Block, gap: number): Block => moveBlock(block, [0, of.box.max[1] + gap - block.box.min[1]]),
  below: (block: Block, of: Block, gap: number): Block => moveBlock(block, [0, of.box.min[1] - gap - block.box.max[1]]),
  right: (block: Block, of: Block, gap: number): Block => moveBlock(block, [of.box.max[0] + gap - block.box.min[0], 0]),
  left: (block: Block, of: Block, gap: number): Block => moveBlock(block, [of.box.min[0] - gap - block.box.max[0], 0]),
};

/** Several blocks as one. @throws RangeError for none. */
export function joined(blocks: readonly Block[]): Block {
  if (blocks.length === 0) throw new RangeError('no blocks to join');
  const of = (pick: (box: Box) => number, best: (...values: number[]) => number): number =>
    best(...blocks.map(({ box }) => pick(box)));
  return {
    entities: blocks.flatMap(({ entities }) => entities),
    box: {
      min: [of((b) => b.min[0], Math.min), of((b) => b.min[1], Math.min)],
      max: [of((b) => b.max[0], Math.max), of((b) => b.max[1], Math.max)],
    },
  };
}

/** Touching the border by rounding is inside, model mm. */
const NOISE = 1e-6;

/** Whether a block has room in a box. */
export const fits = (block: Block, room: Box): boolean =>
  widthOf(block) <= room.max[0] - room.min[0] + NOISE && heightOf(block) <= room.max[1] - room.min[1] + NOISE;

/** A block in the middle of a box. */
export const inMiddle = (block: Block, { min, max }: Box): Block =>
  moveBlock(block, [
    (min[0] + max[0] - block.box.min[0] - block.box.max[0]) / 2,
    (min[1] + max[1] - block.box.min[1] - block.box.max[1]) / 2,
  ]);

/** A block in the upper left corner of a box. */
export const inCorner = (block: Block, { min, max }: Box): Block =>
  moveBlock(block, [min[0] - block.box.min[0], max[1] - block.box.max[1]]);

/** What fits into the middle of a box, as the entities of a sheet; undefined when it does not fit. */
export const centeredIn = (block: Block, room: Box): readonly Entity[] | undefined =>
  fits(block, room) ? inMiddle(block, room).entities : undefined;
