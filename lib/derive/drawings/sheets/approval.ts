import { fits, inCorner, inMiddle, joined, placeBlock } from '../../../drawing/arrange.ts';
import { type Block, moveBlock, widthOf } from '../../../drawing/block.ts';
import type { Box } from '../../../drawing/bounds.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { Pt } from '../../../drawing/entity.ts';
import type { SetHeading, SheetPlan, SheetRoom } from '../../../drawing/sheet.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Assembly } from '../../../model/assembly.ts';
import type { Mm } from '../../../units/mm.ts';
import { seatMap } from '../../checks/seat-map.ts';
import { approvalNotes } from './approval-notes.ts';
import { type ApprovalViews, approvalViews, type Thickness } from './approval-views.ts';
import { fittingDetail } from './edge-detail.ts';
import { noteBlock, noteHeights } from './note-block.ts';
import { type PieceViews, pieceViews } from './piece-views.ts';
import type { SheetSource } from './sheet-source.ts';
import { signatures } from './signatures.ts';
import { smallPicture } from './small-picture.ts';
import { topSection } from './top-section.ts';

/** One page for the client: plan with places, both elevations, a section, sizes and words to agree to, and where to sign. */
export function approvalSheet(source: SheetSource, heading: SetHeading): SheetPlan[] {
  const views = pieceViews(source.nominal, heading.projection);
  const seats = seatMap({ assembly: source.nominal, site: source.site });
  const top = thicknessOf(source.nominal);
  const draw = (room: SheetRoom): readonly Entity[] | undefined => {
    const { style } = room;
    if (!mayFit(views, room.area)) return undefined;
    const shown = approvalViews({ views, seats, top }, heading.projection, style);
    const words = approvalNotes(source, seats, heading, style.lengths);
    const notes = (width: Mm, height: Mm): Block => noteBlock(words, width, style, height);
    const border = views.section.cuts.find(({ part }) => part === topSection(source.nominal)?.part.id)?.loops[0];
    const content = arranged(shown, views, notes, border, room);
    return content && [...content, ...signatures(room.strip, room.heading, style)];
  };
  return [{ name: 'approval', title: 'Approval drawing', draw }];
}

/** Whether the bare piece would have room: its length beside two of its widths, its height and its width above each other. */
function mayFit({ box: { min, max } }: PieceViews, area: Box): boolean {
  const [length, width, height] = [max[0] - min[0], max[1] - min[1], max[2] - min[2]];
  return length + 2 * width <= area.max[0] - area.min[0] && width + height <= area.max[1] - area.min[1];
}

/** Of the top, or of the one board that is a top or a seat. */
function thicknessOf(assembly: Assembly): Thickness | undefined {
  const top = topSection(assembly);
  if (top) return { part: top.part.id, middle: top.middle, edge: top.edge };
  const board = assembly.parts.find(({ kind }) => kind === 'top' || kind === 'seat');
  if (!board) return undefined;
  const { thickness } = board.finished;
  return { part: board.id, middle: thickness, edge: thickness };
}

/** Between blocks, and least width of the notes; paper mm; our convention. */
const GAP: Mm = 8;
const NOTES: Mm = 70;

/** Longer lines are hard to read, paper mm; our convention. */
const READABLE: Mm = 120;

/**
 * Plan and front in one column, end and section beside the front, notes beside the plan. In third angle the plan is above
 * the front, in first angle below it.
 */
function arranged(
  views: ApprovalViews,
  pieces: PieceViews,
  notes: (width: Mm, height: Mm) => Block,
  border: readonly Pt[] | undefined,
  sheet: SheetRoom,
): readonly Entity[] | undefined {
  const { area, style, heading } = sheet;
  const gap = GAP * style.scale;
  const third = heading.projection === 'third';
  const column = joined([views.front, placeBlock[third ? 'above' : 'below'](views.plan, views.front, gap)]);
  if (!fits(column, area)) return undefined;
  const row = [views.end, views.section];
  const spare = area.max[0] - area.min[0] - widthOf(column) - row.reduce((sum, one) => sum + widthOf(one), 0);
  const between = Math.min(spare / row.length, 3 * gap);
  if (between < gap) return undefined;
  const at = (up: number): readonly Entity[] | undefined => {
    const placed = moveBlock(column, [area.min[0] - column.box.min[0], up]);
    const end = placeBlock.right(moveBlock(views.end, [0, up]), placed, between);
    const section = placeBlock.right(moveBlock(views.section, [0, up]), end, between);
    const beside = joined([end, section]);
    const words = noteRoom(beside, placed, area, gap, third);
    const said = withPictures(words, notes, pieces, border, sheet);
    return said && [...placed.entities, ...beside.entities, ...said];
  };
  // In the middle, or where the notes have most room.
  return at(inHeight(column, area)) ?? at(third ? area.min[1] - column.box.min[1] : area.max[1] - column.box.max[1]);
}

/** The notes, and beside or below them what there is room for. */
function withPictures(
  room: Box,
  notes: (width: Mm, height: Mm) => Block,
  views: PieceViews,
  border: readonly Pt[] | undefined,
  sheet: SheetRoom,
): readonly Entity[] | undefined {
  const { style, heading } = sheet;
  const width = (room.max[0] - room.min[0]) / style.scale;
  if (width < NOTES) return undefined;
  const said = noteHeights(heading.paper)
    .flatMap((height) => [notes(Math.min(width, READABLE), height), notes(width, height)])
    .find((one) => fits(one, room));
  if (!said) return undefined;
  const text = inCorner(said, room);
  const gap = GAP * style.scale;
  const beside: Box = { min: [text.box.max[0] + gap, room.min[1]], max: room.max };
  const below: Box = { min: room.min, max: [room.max[0], text.box.min[1] - gap] };
  const free = roomOf(beside) > roomOf(below) ? beside : below;
  return [...text.entities, ...pictures(views, border, free, style)];
}

const roomOf = ({ min, max }: Box): number => Math.min(max[0] - min[0], 2 * (max[1] - min[1]));

/** Less room than this is not worth a picture, paper mm; our convention. */
const SMALL: Mm = 35;

/** The edge of the top below, a picture of the whole above it, as far as there is room. */
function pictures(views: PieceViews, border: readonly Pt[] | undefined, room: Box, style: Style): readonly Entity[] {
  const detail = border && fittingDetail(border, style, (one) => fits(one, room));
  const placed = detail && inMiddle(detail, room);
  const low = placed ? moveBlock(placed, [0, room.min[1] - placed.box.min[1]]) : undefined;
  const gap = GAP * style.scale;
  const above: Box = { min: [room.min[0], low ? low.box.max[1] + gap : room.min[1]], max: room.max };
  if (roomOf(above) < SMALL * style.scale) return (placed ?? low)?.entities ?? [];
  const picture = smallPicture(views.picture, above, style);
  return [...(low?.entities ?? []), ...(picture ? inMiddle(picture, above).entities : [])];
}

/** How far to move a column up into the middle of the area. */
const inHeight = ({ box }: Block, { min, max }: Box): number => (min[1] + max[1] - box.min[1] - box.max[1]) / 2;

/** What is left beside the plan, over or under the end view and the section. */
function noteRoom(beside: Block, column: Block, area: Box, gap: number, third: boolean): Box {
  const left = column.box.max[0] + gap;
  return third
    ? { min: [left, beside.box.max[1] + gap], max: area.max }
    : { min: [left, area.min[1]], max: [area.max[0], beside.box.min[1] - gap] };
}
