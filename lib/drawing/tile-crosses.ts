import type { Box } from './bounds.ts';
import { clipMarks } from './clip-marks.ts';
import type { Mark, Pt } from './entity.ts';
import { LAYERS } from './layers.ts';
import { textCorners } from './text-size.ts';
import { OVERLAP, type TileGrid, type TilePlace, tileCell, tileName, tileWindow } from './tile-grid.ts';

/** Half of an arm of a cross, radius of its ring, height of its number; paper mm, ours. */
const ARM = 5;
const RING = 2.5;
const NUMBER = 2;

/**
 * Where along a seam its two crosses are wanted, in shares of the part that only these two sheets show; our
 * convention.
 */
const SHARES = [0.2, 0.15, 0.25, 0.1, 0.3, 0.35, 0.4] as const;

/** A place on the middle line of an overlap, shown by both sheets. */
interface TileCross {
  readonly at: Pt;
  readonly number: number;
}

/** The room of lettering as its outline, so that what is cut off shows as a line. */
const asLine = (mark: Mark): Mark =>
  mark.kind === 'text' ? { kind: 'poly', layer: mark.layer, points: textCorners(mark, 1), closed: true } : mark;

/** Two crosses at every seam of two sheets that are printed, clear of lines and lettering where that can be. */
export function tileCrosses(grid: TileGrid, tiles: readonly TilePlace[], marks: readonly Mark[]): readonly TileCross[] {
  const lines = marks.map(asLine);
  const printed = new Set(tiles.map(tileName));
  const points = tiles.flatMap(([column, row]): Pt[] => {
    const cell = tileCell(grid, [column, row]);
    const window = tileWindow(grid, [column, row]);
    const right = printed.has(tileName([column + 1, row])) ? onSeam(cell, 1, window.max[0] - OVERLAP / 2, lines) : [];
    const below = printed.has(tileName([column, row + 1])) ? onSeam(cell, 0, window.min[1] + OVERLAP / 2, lines) : [];
    return [...right, ...below];
  });
  return points.map((at, k) => ({ at, number: k + 1 }));
}

function onSeam({ min, max }: Box, axis: 0 | 1, across: number, lines: readonly Mark[]): Pt[] {
  const point = (share: number): Pt => {
    const along = min[axis] + (max[axis] - min[axis]) * share;
    return axis === 0 ? [along, across] : [across, along];
  };
  const isFree = ([x, y]: Pt): boolean =>
    clipMarks(lines, { min: [x - ARM - 1, y - ARM - 1], max: [x + ARM + 1, y + ARM + 1] }).length === 0;
  const best = (hand: (share: number) => number): Pt =>
    SHARES.map((share) => point(hand(share))).find(isFree) ?? point(hand(SHARES[0]));
  return [best((share) => share), best((share) => 1 - share)];
}

/**
 * Half the width of an arm, and how far its ends lean, mm: arms are areas with slanting ends, since lines and upright
 * areas are shifted to whole dots on their way to paper; our convention.
 */
const HALF = 0.125;
const LEAN = 0.2;

/** A cross and its number, at a place of the sheet. */
export function crossMarks([x, y]: Pt, number: number): readonly Mark[] {
  const layer = LAYERS.GAUGE;
  const arm = (point: (along: number, across: number) => Pt): Mark => ({
    kind: 'solid',
    layer,
    corners: [point(-ARM - LEAN, -HALF), point(ARM - LEAN, -HALF), point(ARM + LEAN, HALF), point(LEAN - ARM, HALF)],
  });
  return [
    arm((along, across) => [x + along, y + across]),
    arm((along, across) => [x + across, y + along]),
    { kind: 'circle', layer, center: [x, y], radius: RING },
    { kind: 'text', layer, text: `${number}`, at: [x + RING, y + RING / 2 + 0.6], height: NUMBER },
  ];
}
