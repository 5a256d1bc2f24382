import { fits, inCorner, inMiddle, joined, placeBlock } from '../../../../drawing/arrange.ts';
import { type Block, heightOf, moveBlock, widthOf } from '../../../../drawing/block.ts';
import type { Box } from '../../../../drawing/bounds.ts';
import type { Entity } from '../../../../drawing/drawing.ts';
import type { ProjectionAngle, SheetRoom } from '../../../../drawing/sheet.ts';
import type { Mm } from '../../../../units/mm.ts';
import { type Note, noteBlock, noteHeights } from '../note-block.ts';
import type { PartBlocks } from './part-blocks.ts';
import type { Side } from './part-views.ts';

/** Between views, and around the words; paper mm; our convention. */
const GAP: Mm = 6;

/** Lines of words are no longer and no shorter than this, paper mm; our convention. */
const READABLE: Mm = 150;
const LEAST: Mm = 75;

/** The views around the face as the projection asks for. */
export function viewsOf(blocks: PartBlocks, flipped: boolean, angle: ProjectionAngle, scale: number): Block {
  const gap = GAP * scale;
  const face = blocks.get('face')!;
  const isFirst = angle === 'first';
  const where = (side: Side, plain: 'above' | 'left', other: 'below' | 'right'): typeof plain | typeof other =>
    ((side === 'edge' || side === 'end') === flipped) === isFirst ? plain : other;
  const edges = (['edge', 'farEdge'] as const).flatMap((side) => {
    const one = blocks.get(side);
    return one ? [placeBlock[where(side, 'above', 'below')](one, face, gap)] : [];
  });
  const ends = (['end', 'farEnd'] as const).flatMap((side) => {
    const one = blocks.get(side);
    return one ? [placeBlock[where(side, 'left', 'right')](one, face, gap)] : [];
  });
  return joined([face, ...edges, ...clearOf(ends, [face, ...edges], gap)]);
}

/** End views moved outwards until they stand clear of the wider of the views along the part. */
function clearOf(ends: readonly Block[], middle: readonly Block[], gap: number): Block[] {
  const { min, max } = joined(middle).box;
  return ends.map((end) => {
    const isLeft = end.box.max[0] <= middle[0]!.box.min[0];
    const by = isLeft ? Math.min(0, min[0] - gap - end.box.max[0]) : Math.max(0, max[0] + gap - end.box.min[0]);
    return moveBlock(end, [by, 0]);
  });
}

/**
 * Views above, words below them on the left, down beside the title block, and tables beside the words; or words and tables
 * beside the views where those are narrow.
 */
export function arrangePart(
  views: Block,
  notes: readonly Note[],
  tables: (height: Mm) => readonly Block[],
  room: SheetRoom,
): readonly Entity[] | undefined {
  if (!fits(views, room.area)) return undefined;
  for (const height of noteHeights(room.heading.paper)) {
    const laid = tables(height);
    const words = (width: Mm): Block => origin(noteBlock(notes, width, room.style, height));
    const done = below(views, words, laid, room) ?? beside(views, words, laid, room);
    if (done) return done;
  }
  return undefined;
}

type Words = (width: Mm) => Block;

/** Tables beside each other, else below each other. */
function below(
  views: Block,
  words: Words,
  tables: readonly Block[],
  { area, strip, style }: SheetRoom,
): Entity[] | undefined {
  const gap = GAP * style.scale;
  const free = (strip.max[0] - strip.min[0]) / style.scale;
  const stacks = tables.length > 1 ? [row(tables, gap), column(tables, gap)] : tables.map(origin);
  for (const stack of stacks.length > 0 ? stacks : [undefined]) {
    const taken = stack ? widthOf(stack) / style.scale + GAP : 0;
    const width = Math.min(READABLE, free, (area.max[0] - area.min[0]) / style.scale - taken);
    if (width < LEAST) continue;
    const text = words(width);
    const high = Math.max(strip.min[1] + heightOf(text), stack ? area.min[1] + heightOf(stack) : 0);
    const above: Box = { min: [area.min[0], Math.max(high + gap, area.min[1])], max: area.max };
    if (!fits(views, above)) continue;
    const left = moveBlock(text, [area.min[0], high]);
    const right = stack && moveBlock(stack, [area.min[0] + (width + GAP) * style.scale, high]);
    return [...inMiddle(views, above).entities, ...left.entities, ...(right?.entities ?? [])];
  }
  return undefined;
}

function beside(
  views: Block,
  words: Words,
  tables: readonly Block[],
  { area, style }: SheetRoom,
): Entity[] | undefined {
  const gap = GAP * style.scale;
  const left = (area.max[0] - area.min[0] - widthOf(views) - 2 * gap) / style.scale;
  if (left < LEAST) return undefined;
  const info = column([words(Math.min(left, READABLE)), ...tables], gap);
  const from = area.max[0] - widthOf(info);
  if (heightOf(info) > area.max[1] - area.min[1] || from - 2 * gap - area.min[0] < widthOf(views)) return undefined;
  return [
    ...inMiddle(views, { min: area.min, max: [from - 2 * gap, area.max[1]] }).entities,
    ...inCorner(info, { min: [from, area.min[1]], max: area.max }).entities,
  ];
}

const origin = (one: Block): Block => moveBlock(one, [-one.box.min[0], -one.box.max[1]]);

const row = (blocks: readonly Block[], gap: number): Block => lined(blocks, 'right', gap);

const column = (blocks: readonly Block[], gap: number): Block => lined(blocks, 'below', gap);

/** Blocks after each other, their upper left corners on one line. */
function lined(blocks: readonly Block[], side: 'right' | 'below', gap: number): Block {
  const placed: Block[] = [];
  for (const one of blocks.map(origin)) {
    const last = placed.at(-1);
    placed.push(last ? placeBlock[side](one, last, gap) : one);
  }
  return joined(placed);
}
