import { type PaperSet, SCALES } from '../../../drawing/paper.ts';
import type { SetHeading, SheetPlan } from '../../../drawing/sheet.ts';
import { partOf, placeOf } from '../../../model/assembly.ts';
import type { Part } from '../../../model/part.ts';
import type { Mm } from '../../../units/mm.ts';
import { marksText } from '../../cut-list/building-order.ts';
import { FINE_LOOK } from './fine-look.ts';
import { arrangePart, viewsOf } from './part/arrange-part.ts';
import { partBlocks } from './part/part-blocks.ts';
import { type PartKinds, partKinds } from './part/part-kinds.ts';
import { partNotes } from './part/part-notes.ts';
import { type PartViews, partViews, viewsFit } from './part/part-views.ts';
import { letteredPockets } from './part/pocket-letters.ts';
import { pocketTable } from './part/pocket-table.ts';
import { sideWordsOf } from './part/side-words.ts';
import { smallPartsSheet } from './part/small-parts.ts';
import { stripTable } from './part/strip-table.ts';
import type { SheetSource } from './sheet-source.ts';

/** A sheet for every kind of part, in building order, and one for all loose tenons and pads. */
export const partSheets = (source: SheetSource, heading: SetHeading): SheetPlan[] => [
  ...partKinds(source.assembly).map((kinds) => partSheet(kinds, source, heading)),
  ...smallPartsSheet(source.assembly),
];

function partSheet(kinds: PartKinds, { assembly, shapes }: SheetSource, { projection, paper }: SetHeading): SheetPlan {
  const [part] = kinds.parts;
  const words = sideWordsOf(part);
  const marks = kinds.parts.map(({ mark }) => mark);
  const members = (part.members ?? []).map((id) => partOf(assembly, id).mark);
  let views: PartViews | undefined;
  return {
    name: `part-${part.mark.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`,
    title: `${part.name.slice(0, 1).toUpperCase()}${part.name.slice(1)} ${marksText(marks)}`,
    scales: legibleScales(part, paper.set),
    // As fine as the story stick, so that a slot has one place on both.
    look: (lengths) => FINE_LOOK[lengths],
    draw: (room) => {
      const { area, style } = room;
      views ??= partViews(part, shapes.get(part.id)!.solid, placeOf(assembly, part.id));
      const shown = views;
      if (!viewsFit(shown, area, style.scale)) return undefined;
      const pockets = letteredPockets(part, words, style.lengths);
      const blocks = partBlocks(part, shown, pockets, words, style);
      const drawn = viewsOf(blocks, shown.flipped, projection, style.scale);
      const tables = (height: number) =>
        [pocketTable(pockets, height, style), stripTable(kinds.parts, height, style)].filter(
          (one) => one !== undefined,
        );
      return arrangePart(drawn, partNotes(kinds, members, pockets, style.lengths), tables, room);
    },
  };
}

/** A part is drawn at least this long, on larger paper if need be; paper mm: our convention. */
const SHOWN: Mm = 80;

/** Scales at which one can still work from the drawing of a part. */
function legibleScales({ finished }: Part, set: PaperSet): readonly number[] {
  const longest = Math.max(finished.length, finished.width);
  return SCALES[set].filter((scale, k) => k === 0 || longest >= SHOWN * scale);
}
