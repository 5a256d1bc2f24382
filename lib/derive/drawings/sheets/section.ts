import { centeredIn, joined, placeBlock } from '../../../drawing/arrange.ts';
import type { Block } from '../../../drawing/block.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { SetHeading, SheetPlan, SheetRoom } from '../../../drawing/sheet.ts';
import type { LengthLook } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';
import { endView } from '../orthographic.ts';
import { halfTop, mirrored } from './half-top.ts';
import { type Note, noteBlock, noteHeights } from './note-block.ts';
import { type SeamRows, sectionDrawing } from './section-drawing.ts';
import { sectionNotes } from './section-notes.ts';
import type { SheetSource } from './sheet-source.ts';
import { cutStation, topCuts } from './top-cuts.ts';
import { topSection } from './top-section.ts';

/** Both systems beside each other where the design speaks inches: taper is where they get mixed up. */
const LOOKS: { readonly [L in LengthLook['system']]: LengthLook } = {
  in: { system: 'both', denominator: 64, rounding: 'nearest', decimals: 1 },
  both: { system: 'both', denominator: 64, rounding: 'nearest', decimals: 1 },
  mm: { system: 'mm', decimals: 1 },
};

/** The top cut across: one half when the other is its mirror image, else a sheet for each. None without a top of one panel. */
export function sectionSheets(source: SheetSource, heading: SetHeading): SheetPlan[] {
  const top = topSection(source.assembly);
  if (!top) return [];
  const view = endView(heading.projection);
  const along = cutStation(source.assembly, top);
  const cuts = topCuts(source, top, view, along);
  const designed = source.measured === undefined ? undefined : topSection(source.nominal)?.body;
  const halves = {
    1: halfTop(source.assembly, top, view, 1, along, designed),
    [-1]: halfTop(source.assembly, top, view, -1, along, designed),
  };
  const plan = (name: string, title: string, side: 1 | -1, other: string): SheetPlan => ({
    name,
    title,
    look: (lengths) => LOOKS[lengths],
    draw: (room) => {
      // Long before anything is hatched.
      if (top.half > room.area.max[0] - room.area.min[0]) return undefined;
      const words = sectionNotes(source, top, halves[side], along, other, room);
      const drawn = (rows: SeamRows): readonly Entity[] | undefined =>
        arranged(sectionDrawing(halves[side], cuts(side), rows, room.style), words, room);
      return drawn('each') ?? drawn('chain');
    },
  });
  if (mirrored(halves[1], halves[-1])) {
    return [plan('section', 'Section of the top', 1, 'the other half is its mirror image')];
  }
  const left: 1 | -1 = view.right[1] > 0 ? 1 : -1;
  const right = left === 1 ? -1 : 1;
  return [
    plan('section-left', 'Section of the top, left half', left, 'the right half has a sheet of its own'),
    plan('section-right', 'Section of the top, right half', right, 'the left half has a sheet of its own'),
  ];
}

/** Between drawing and notes, paper mm; our convention. */
const GAP: Mm = 6;

/** Longer lines are hard to read, paper mm; our convention. */
const READABLE: Mm = 190;

function arranged(
  drawing: Block,
  words: readonly Note[],
  { area, style, heading }: SheetRoom,
): readonly Entity[] | undefined {
  const width = Math.min(READABLE, (area.max[0] - area.min[0]) / style.scale);
  return noteHeights(heading.paper)
    .map((height) => placeBlock.below(noteBlock(words, width, style, height), drawing, GAP * style.scale))
    .map((text) => centeredIn(joined([drawing, text]), area))
    .find(Boolean);
}
