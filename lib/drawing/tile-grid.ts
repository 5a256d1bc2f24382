import type { Mm } from '../units/mm.ts';
import type { Box } from './bounds.ts';
import { clipMarks } from './clip-marks.ts';
import type { Mark, Pt } from './entity.ts';

/** What two sheets show both, mm: our convention. */
export const OVERLAP = 15;

/** From the edge of the paper to all that is printed, mm: 1/2 in, which office printers reach (common practice, no source). */
export const EDGE = 12.7;

/** Room for the bars at the left and below, and for the words above, mm; our convention. */
const STRIP = { bars: 9, words: 8 } as const;

export interface Sheet {
  readonly width: Mm;
  readonly height: Mm;
}

/** The part of a sheet that shows a piece of the drawing, paper mm. */
export const windowOn = ({ width, height }: Sheet): Box => ({
  min: [EDGE + STRIP.bars, EDGE + STRIP.bars],
  max: [width - EDGE, height - EDGE - STRIP.words],
});

/** Sheets side by side over a drawing at full size. Columns run from the left, rows from the top. */
export interface TileGrid {
  readonly sheet: Sheet;
  readonly columns: number;
  readonly rows: number;
  /** The upper left corner, in the drawing. */
  readonly corner: Pt;
}

export type TilePlace = readonly [column: number, row: number];

const sizeOf = (box: Box): readonly [Mm, Mm] => [box.max[0] - box.min[0], box.max[1] - box.min[1]];

/** How much of the drawing all sheets of a grid show, mm. */
export function gridSize({ sheet, columns, rows }: Omit<TileGrid, 'corner'>): readonly [Mm, Mm] {
  const [wide, tall] = sizeOf(windowOn(sheet));
  return [columns * (wide - OVERLAP) + OVERLAP, rows * (tall - OVERLAP) + OVERLAP];
}

/** The least grid over a box; where it is larger, the spare goes to what is `wanted` besides, if that fits, else to both sides. */
export function gridOver(box: Box, wanted: Box, sheet: Sheet): TileGrid {
  const window = sizeOf(windowOn(sheet));
  const need = sizeOf(box);
  const count = (axis: 0 | 1): number =>
    Math.max(1, Math.ceil((need[axis] - OVERLAP) / (window[axis] - OVERLAP) - 1e-9));
  const grid = { sheet, columns: count(0), rows: count(1) };
  const size = gridSize(grid);
  const middle = (axis: 0 | 1): Mm => {
    const { min, max } = sizeOf(wanted)[axis] <= size[axis] ? wanted : box;
    return (min[axis] + max[axis]) / 2;
  };
  return { ...grid, corner: [middle(0) - size[0] / 2, middle(1) + size[1] / 2] };
}

/** What a sheet of the grid shows of the drawing. */
export function tileWindow({ sheet, corner }: TileGrid, [column, row]: TilePlace): Box {
  const [wide, tall] = sizeOf(windowOn(sheet));
  const left = corner[0] + column * (wide - OVERLAP);
  const top = corner[1] - row * (tall - OVERLAP);
  return { min: [left, top - tall], max: [left + wide, top] };
}

/** The same up to the middle of every overlap: these parts cover the drawing once. */
export function tileCell(grid: TileGrid, place: TilePlace): Box {
  const { min, max } = tileWindow(grid, place);
  const half = OVERLAP / 2;
  const [column, row] = place;
  return {
    min: [min[0] + (column > 0 ? half : 0), min[1] + (row < grid.rows - 1 ? half : 0)],
    max: [max[0] - (column < grid.columns - 1 ? half : 0), max[1] - (row > 0 ? half : 0)],
  };
}

export const tilePlaces = ({ columns, rows }: TileGrid): readonly TilePlace[] =>
  Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column): TilePlace => [column, row]),
  ).flat();

/** "A1": columns by letters from the left, rows by numbers from the top. */
export const tileName = ([column, row]: TilePlace): string => {
  const letter = (k: number): string =>
    (k < 26 ? '' : letter(Math.floor(k / 26) - 1)) + String.fromCharCode(65 + (k % 26));
  return `${letter(column)}${row + 1}`;
};

/** The sheets that a line enters, and what it takes to join them; in the order of reading. */
export function neededTiles(grid: TileGrid, lines: readonly Mark[]): readonly TilePlace[] {
  const needed = new Set(
    tilePlaces(grid)
      .filter((place) => clipMarks(lines, tileCell(grid, place)).length > 0)
      .map(tileName),
  );
  for (let path = bridge(grid, needed); path; path = bridge(grid, needed)) for (const name of path) needed.add(name);
  return tilePlaces(grid).filter((place) => needed.has(tileName(place)));
}

/** A shortest row of sheets from those joined with the first one to any other that is needed; nothing when all are joined. */
function bridge(grid: TileGrid, needed: ReadonlySet<string>): readonly string[] | undefined {
  const places = tilePlaces(grid);
  const first = places.find((place) => needed.has(tileName(place)));
  if (!first) return undefined;
  const cost = new Map([[tileName(first), 0]]);
  const from = new Map<string, string>();
  const open: TilePlace[] = [first];
  while (open.length > 0) {
    open.sort((a, b) => cost.get(tileName(a))! - cost.get(tileName(b))!);
    const [column, row] = open.shift()!;
    const here = tileName([column, row]);
    if (needed.has(here) && cost.get(here)! > 0) return trail(here, from);
    for (const next of places.filter(([c, r]) => Math.abs(c - column) + Math.abs(r - row) === 1)) {
      const name = tileName(next);
      const sum = cost.get(here)! + (needed.has(name) ? 0 : 1);
      if ((cost.get(name) ?? Infinity) <= sum) continue;
      cost.set(name, sum);
      from.set(name, here);
      open.push(next);
    }
  }
  return undefined;
}

function trail(to: string, from: ReadonlyMap<string, string>): readonly string[] {
  const names = [to];
  for (let name = from.get(to); name !== undefined; name = from.get(name)) names.push(name);
  return names;
}
