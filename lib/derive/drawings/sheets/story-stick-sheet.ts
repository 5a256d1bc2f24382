import { centeredIn, fits, joined, placeBlock } from '../../../drawing/arrange.ts';
import { type Block, moveBlock } from '../../../drawing/block.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { SetHeading, SheetPlan, SheetRoom } from '../../../drawing/sheet.ts';
import type { Mm } from '../../../units/mm.ts';
import { FINE_LOOK } from './fine-look.ts';
import { noteBlock, noteHeights } from './note-block.ts';
import type { SheetSource } from './sheet-source.ts';
import { type StoryStick, storySticks } from './story-stick.ts';
import { stickViews } from './story-stick-drawing.ts';
import { stickNotes, stickTable } from './story-stick-words.ts';
import { tableBlock } from './table-block.ts';

/** A stick for the slots of all joints of a top; none when it has no tenons, more when its joints differ. */
export function storyStickSheets({ assembly }: SheetSource, _heading: SetHeading): SheetPlan[] {
  return storySticks(assembly).map((stick, k) => ({
    name: stickName(k),
    title: k === 0 ? 'Story stick of the top' : `Story stick of the top, ${k + 1}`,
    look: (lengths) => FINE_LOOK[lengths],
    draw: (room) => drawn(stick, room),
  }));
}

/** "story-stick", "story-stick-2": names of files. */
export const stickName = (k: number): string => (k === 0 ? 'story-stick' : `story-stick-${k + 1}`);

/** Between views, table and notes; paper mm; our convention. */
const GAP: Mm = 7;

/** Longer lines are hard to read, paper mm; our convention. */
const READABLE: Mm = 190;

/** Least length of a slot, and least distance of their middles; paper mm; our convention. */
const SLOT: Mm = 1.5;
const STEP: Mm = 8;

/** Too small to tell slots from each other, or their numbers. */
const isTooSmall = ({ slots }: StoryStick, scale: number): boolean =>
  slots.some(
    ({ tight: [from, to], middle }, k) =>
      to - from < SLOT * scale || (k > 0 && middle - slots[k - 1]!.middle < STEP * scale),
  );

/** The table beside the views where there is room for it, else below them; the notes below all. */
function drawn(stick: StoryStick, { area, style, heading }: SheetRoom): readonly Entity[] | undefined {
  if (isTooSmall(stick, style.scale)) return undefined;
  const [lath, face] = stickViews(stick, style);
  const views = joined([lath, face]);
  if (!fits(views, area)) return undefined;
  const { columns, rows } = stickTable(stick, style.lengths);
  const words = stickNotes(stick, style.lengths);
  const gap = GAP * style.scale;
  const width = Math.min(READABLE, (area.max[0] - area.min[0]) / style.scale);
  return noteHeights(heading.paper)
    .flatMap((height): (readonly Entity[] | undefined)[] => {
      const table = tableBlock(columns, rows, height, style);
      const notes = noteBlock(words, width, style, height);
      const beside = joined([views, placeBlock.right(level(table, views), views, gap)]);
      const below = placeBlock.below(alignedLeft(table, views), views, gap);
      const narrow = (area.max[0] - area.min[0] - (table.box.max[0] - table.box.min[0]) - gap) / style.scale;
      return [
        centeredIn(joined([beside, placeBlock.below(alignedLeft(notes, beside), beside, gap)]), area),
        ...(narrow < NARROW
          ? []
          : [
              centeredIn(
                joined([
                  views,
                  below,
                  besideTable(noteBlock(words, Math.min(width, narrow), style, height), below, gap),
                ]),
                area,
              ),
            ]),
      ];
    })
    .find(Boolean);
}

/** Notes narrower than this are not worth it, paper mm; our convention. */
const NARROW: Mm = 80;

/** Upper edges in line. */
const level = (one: Block, of: Block): Block => moveBlock(one, [0, of.box.max[1] - one.box.max[1]]);

const alignedLeft = (one: Block, of: Block): Block => moveBlock(one, [of.box.min[0] - one.box.min[0], 0]);

const besideTable = (notes: Block, table: Block, gap: number): Block =>
  placeBlock.right(level(notes, table), table, gap);
