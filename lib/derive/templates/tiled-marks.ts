import { type Box, boundsOf } from '../../drawing/bounds.ts';
import { isWithin } from '../../drawing/clip-marks.ts';
import type { Dim } from '../../drawing/dim.ts';
import type { Entity } from '../../drawing/drawing.ts';
import type { Mark, Text } from '../../drawing/entity.ts';
import { explode } from '../../drawing/explode.ts';
import { textCorners } from '../../drawing/text-size.ts';
import { tileWindow } from '../../drawing/tile-grid.ts';
import { along, polar } from '../../drawing/vec.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { drawFace } from './draw-face.ts';
import type { Sheet } from './sheet.ts';
import type { Template } from './templates.ts';
import type { Tiling } from './tiling.ts';

/** From the border of a sheet's picture to lettering, mm; our convention. */
const CLEAR = 0.5;

/** How far lettering of a dimension may move along its line, and by how much at a time, mm; our convention. */
const SLIDE = { most: 200, step: 2 } as const;

/**
 * A template as it is cut up: all lettering stands whole on one sheet at least. Running dimensions of a side are left out when
 * not all of them find room; they stand in the tables.
 */
export function tiledMarks({ face }: Template, { grid, tiles }: Tiling, units: UnitSystem): readonly Mark[] {
  const windows = tiles.map((place): Box => {
    const { min, max } = tileWindow(grid, place);
    return { min: [min[0] + CLEAR, min[1] + CLEAR], max: [max[0] - CLEAR, max[1] - CLEAR] };
  });
  const sheet = drawFace(face, units, windows);
  const laid = sheet.entities.map((entity) => ({ side: sideOf(entity), marks: fitted(entity, sheet, windows) }));
  const lost = new Set(laid.filter(({ side, marks }) => side !== undefined && !marks).map(({ side }) => side));
  return laid.flatMap(({ side, marks }) => (marks && !lost.has(side) ? marks : []));
}

/** Which row of running dimensions something belongs to. */
function sideOf(entity: Entity): string | undefined {
  if (entity.kind !== 'dim' || entity.type !== 'linear') return undefined;
  return entity.angle === 0 ? 'below' : entity.at[0] < 0 ? 'left' : 'right';
}

/** The marks of an entity with its lettering where a window shows it; nothing when there is no such place. */
function fitted(entity: Entity, sheet: Sheet, windows: readonly Box[]): readonly Mark[] | undefined {
  if (entity.kind !== 'dim') return isShown(entity, windows) ? [entity] : undefined;
  const marks = explode(entity, sheet.style).entities.map((mark) =>
    mark.kind === 'text' ? slid(mark, entity, sheet, windows) : mark,
  );
  const whole = marks.every((mark) => mark !== undefined && isShown(mark, windows));
  return whole ? (marks as readonly Mark[]) : undefined;
}

/** Lines are cut where a sheet ends; lettering and arrowheads are not. */
const isShown = (mark: Mark, windows: readonly Box[]): boolean =>
  mark.kind === 'text' || mark.kind === 'solid'
    ? windows.some((window) => isWithin(mark, window))
    : boundsOf([mark], 1) !== undefined;

/** Lettering moved along its own line to the nearest place that a window shows whole. */
function slid(text: Text, dim: Dim, sheet: Sheet, windows: readonly Box[]): Text | undefined {
  const moved = (by: number): Text => ({ ...text, at: along(text.at, polar(text.rotation ?? 0), by) });
  if (isShown(text, windows)) return text;
  if (dim.type === 'radius' || dim.type === 'diameter') return undefined;
  const steps = Array.from({ length: SLIDE.most / SLIDE.step }, (_, k) => (k + 1) * SLIDE.step);
  const places = steps.flatMap((by) => [moved(by), moved(-by)]).filter((one) => isShown(one, windows));
  return places.find((one) => sheet.isClear(textCorners(one, 1))) ?? places[0];
}
