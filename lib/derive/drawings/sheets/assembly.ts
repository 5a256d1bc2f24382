import { fits, inCorner, inMiddle } from '../../../drawing/arrange.ts';
import { type Block, block, heightOf, widthOf } from '../../../drawing/block.ts';
import type { Box } from '../../../drawing/bounds.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { SetHeading, SheetPlan, SheetRoom } from '../../../drawing/sheet.ts';
import type { Style } from '../../../drawing/style.ts';
import { type Assembly, partOf } from '../../../model/assembly.ts';
import type { PartId } from '../../../model/part.ts';
import type { Mm } from '../../../units/mm.ts';
import { balloonMarks, balloonRadius } from '../balloon-marks.ts';
import { balloons } from '../balloons.ts';
import { type ExplodedView, explodedView } from '../exploded-view.ts';
import { hiddenLines } from '../hidden-lines.ts';
import { standingSolids } from '../standing-solids.ts';
import { viewEntities } from '../view-entities.ts';
import type { ViewLine } from '../view-line.ts';
import { assemblyKey } from './assembly-key.ts';
import { FINE_LOOK } from './fine-look.ts';
import { type Note, noteBlock, noteHeights } from './note-block.ts';
import type { SheetSource } from './sheet-source.ts';
import { smallPicture } from './small-picture.ts';
import { tableBlock } from './table-block.ts';

/** All joints opened, a mark on every piece, and what each mark is; the whole piece beside it. */
export function assemblySheet({ assembly, shapes }: SheetSource, _heading: SetHeading): SheetPlan[] {
  const view = explodedView(assembly, shapes);
  const whole = hiddenLines(standingSolids(assembly), view.view, { hidden: false });
  const [wide, tall] = ([0, 1] as const).map((axis) => extentOf(view, axis)) as [Mm, Mm];
  return [
    {
      name: 'assembly',
      title: 'Assembly',
      look: (lengths) => FINE_LOOK[lengths],
      draw: (room) => {
        const { min, max } = room.area;
        return wide > max[0] - min[0] || tall > max[1] - min[1] ? undefined : drawn(assembly, view, whole, room);
      },
    },
  ];
}

/** How far the bare lines of a view reach along one axis of the sheet, mm. */
function extentOf({ lines }: ExplodedView, axis: 0 | 1): Mm {
  let [low, high] = [Infinity, -Infinity];
  for (const { from, to } of lines) {
    low = Math.min(low, from[axis], to[axis]);
    high = Math.max(high, from[axis], to[axis]);
  }
  return high - low;
}

/** Between view, key and picture; paper mm; our convention. */
const GAP: Mm = 8;

/** The view at the left, the key at the right, the whole piece below the key. */
function drawn(
  assembly: Assembly,
  view: ExplodedView,
  whole: readonly ViewLine[],
  { area, strip, style, heading }: SheetRoom,
): readonly Entity[] | undefined {
  const gap = GAP * style.scale;
  const shown = new Set(view.solids.map(({ part }) => part));
  for (const height of noteHeights(heading.paper)) {
    const { columns, rows } = assemblyKey(assembly, shown, style.lengths, height);
    const key = tableBlock(columns, rows, height, style);
    if (!fits(key, area)) continue;
    const left = area.max[0] - widthOf(key);
    const placed = inCorner(key, { min: [left, area.min[1]], max: area.max });
    const below: Box = { min: [left, area.min[1]], max: [area.max[0], placed.box.min[1] - gap] };
    const picture = smallPicture(whole, below, style);
    if (!picture) continue;
    const exploded = explodedBlock(assembly, view, { min: area.min, max: [left - gap, area.max[1]] }, style);
    if (!exploded) continue;
    return [
      ...placed.entities,
      ...inMiddle(picture, below).entities,
      ...exploded,
      ...notesIn(strip, heading.paper, style),
    ];
  }
  return undefined;
}

/** A view that is smaller than this shows nothing, paper mm; our convention. */
const LEAST: Mm = 100;

/** The view with its balloons in a room; undefined when it has none. */
function explodedBlock(assembly: Assembly, view: ExplodedView, room: Box, style: Style): readonly Entity[] | undefined {
  const lines = viewLines(assembly, view);
  const bare = block(lines, style);
  if (!fits(bare, room) || Math.max(widthOf(bare), heightOf(bare)) < LEAST * style.scale) return undefined;
  const mark = (id: PartId): string => partOf(assembly, id).mark;
  const wishes = view.solids.flatMap(({ part: id }, solid) =>
    partOf(assembly, id).kind === 'looseTenon' ? [] : [{ solid, radius: balloonRadius(mark(id), style) * style.scale }],
  );
  const around = balloons(view.cells, view.clear, wishes, roomAround(bare, room), style.scale);
  if (!around) return undefined;
  const all = block(
    [...lines, ...around.flatMap((one) => balloonMarks(one, mark(view.solids[one.solid]!.part), style))],
    style,
  );
  return fits(all, room) ? inMiddle(all, room).entities : undefined;
}

/** The same room with the view in its middle. */
const roomAround = ({ box }: Block, { min, max }: Box): Box => {
  const spare = ([0, 1] as const).map((k) => (max[k] - min[k] - (box.max[k] - box.min[k])) / 2) as [Mm, Mm];
  return {
    min: [box.min[0] - spare[0], box.min[1] - spare[1]],
    max: [box.max[0] + spare[0], box.max[1] + spare[1]],
  };
};

/** Pieces by a wide line around them, edges within them and tenons by narrow ones. */
function viewLines(assembly: Assembly, { lines, axes }: ExplodedView): Entity[] {
  const wide = ({ outline, part }: ViewLine): boolean => outline && partOf(assembly, part).kind !== 'looseTenon';
  return [
    ...axes.map((points): Entity => ({ kind: 'poly', layer: LAYERS.CENTER, points, closed: false })),
    ...viewEntities(lines.filter((line) => !wide(line))).map((poly): Entity => ({ ...poly, layer: LAYERS.PICTURE })),
    ...viewEntities(lines.filter(wide)),
  ];
}

const NOTES: readonly Note[] = [
  { head: 'Drawn', text: 'isometric: edges along the table, across it and upright are to scale' },
  { head: 'Tenons', text: 'loose, drawn half-way between the slots they go into' },
  { head: 'Sizes', text: 'finished, T x W x L; the cut list has the rough ones' },
];

/** As many notes as there is room for beside the title block. */
function notesIn(strip: Box, paper: SheetRoom['heading']['paper'], style: Style): readonly Entity[] {
  const width = (strip.max[0] - strip.min[0]) / style.scale;
  const tried = NOTES.map((_, k) => NOTES.slice(0, NOTES.length - k)).flatMap((notes) =>
    noteHeights(paper).map((height) => noteBlock(notes, width, style, height)),
  );
  const found = tried.find((one) => fits(one, strip));
  return found ? inCorner(found, strip).entities : [];
}
