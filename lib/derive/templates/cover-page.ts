import { type Box, boundsOf } from '../../drawing/bounds.ts';
import { clipMarks } from '../../drawing/clip-marks.ts';
import type { Mark, Pt } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { letterWidth } from '../../drawing/letter-width.ts';
import type { Page } from '../../drawing/page.ts';
import { moveMark } from '../../drawing/place.ts';
import { fittingHeight, printSheet, textMark } from '../../drawing/print-sheet.ts';
import { gridSize, tileCell, tileName, tilePlaces, windowOn } from '../../drawing/tile-grid.ts';
import { polyOf } from './face-poly.ts';
import type { Heading } from './heading.ts';
import { lengthText } from './length-text.ts';
import { nameLine, revisionLine } from './note-lines.ts';
import type { PrintPaper } from './print-papers.ts';
import type { Template } from './templates.ts';
import type { Tiling } from './tiling.ts';

/** Side of the square to be measured, mm. */
const SQUARE = 100;

/** What is to be done with the sheets, in order. */
const STEPS = [
  'Print this cover first. Measure the square and the bars; if they are off, mend the setting before the rest is printed.',
  'Cut or fold each sheet along one of its borders where it meets the next.',
  'Lay crosses of one number over each other, hold the sheets against a window or a lamp, and tape them.',
  'Measure the length and height over all once more before anything is cut.',
] as const;

/** The first page of a template in sheets: how to join them, the map, a square of 100 mm. */
export function coverPage(template: Template, tiling: Tiling, paper: PrintPaper, heading: Heading): Page {
  const { min, max } = windowOn(paper);
  const wide = max[0] - min[0];
  const { near } = template.face.outlines;
  const box = boundsOf([polyOf('OUTLINE', near)], 1)!;
  const size = [0, 1].map((axis) => lengthText(box.max[axis as 0] - box.min[axis as 0], heading.units));
  const name = nameLine(template.face);
  const lines = [
    `full size, finished line: ${size[0]} long, ${size[1]} high over all`,
    tiling.tiles.length === 1
      ? 'one sheet, nothing to join'
      : `${tiling.tiles.length} sheets to join; those crossed out in the map are empty and not printed`,
    ...STEPS.map((step, k) => `${k + 1}. ${step}`),
  ];
  const top = max[1] - 8;
  const words: Mark[] = [
    textMark(name, [min[0], top], fittingHeight(name, wide, 5, true), { bold: true }),
    ...lines.map((line, k) => textMark(line, [min[0], top - 8 - k * 5], fittingHeight(line, wide, 2.5))),
  ];
  const upper = top - 8 - lines.length * 5;
  const lower = min[1] + SQUARE + 10;
  const map = mapMarks(template, tiling, [min[0], lower], [wide, upper - lower]);
  return printSheet(
    paper,
    'Cover',
    ['how the sheets are joined', revisionLine(heading)],
    [...words, ...map, ...square([min[0] + 4, min[1] + 4])],
  );
}

function square([x, y]: Pt): Mark[] {
  const points = [
    [x, y],
    [x + SQUARE, y],
    [x + SQUARE, y + SQUARE],
    [x, y + SQUARE],
  ] as const;
  return [
    { kind: 'poly', layer: LAYERS.GAUGE, points, closed: true },
    textMark('100 mm square', [x + SQUARE / 2, y + SQUARE / 2 + 2], 3.5, { align: 'center' }),
    textMark('measure its sides, middle of line to middle of line', [x + SQUARE / 2, y + SQUARE / 2 - 4], 2.2, {
      align: 'center',
    }),
  ];
}

/** The outline with all sheets over it, in a room given by its lower left corner and its size. */
function mapMarks({ face }: Template, { grid, tiles }: Tiling, at: Pt, room: Pt): Mark[] {
  const [wide, tall] = gridSize(grid);
  const factor = Math.min(room[0] / wide, room[1] / tall);
  const to = ([x, y]: Pt): Pt => [
    at[0] + (x - grid.corner[0]) * factor,
    at[1] + (room[1] + tall * factor) / 2 + (y - grid.corner[1]) * factor,
  ];
  const outlines = [polyOf('OUTLINE', face.outlines.near), polyOf('SAW-LINE', face.saw)].map((mark) =>
    moveMark(mark, to, factor),
  );
  const numbers = new Map(tiles.map((place, k) => [tileName(place), k + 1]));
  const cells = tilePlaces(grid).flatMap((place): Mark[] => {
    const { min, max } = tileCell(grid, place);
    const [[left, low], [right, high]] = [to(min), to(max)];
    const corners: readonly Pt[] = [
      [left, low],
      [right, low],
      [right, high],
      [left, high],
    ];
    const border: Mark = { kind: 'poly', layer: LAYERS.RULE, points: corners, closed: true };
    const number = numbers.get(tileName(place));
    if (number === undefined) {
      const cross = [corners[0]!, corners[2]!, corners[3]!, corners[1]!] as const;
      const stroke = (points: readonly Pt[]): Mark => ({ kind: 'poly', layer: LAYERS.RULE, points, closed: false });
      return [border, stroke([cross[0], cross[1]]), stroke([cross[2], cross[3]])];
    }
    return [
      border,
      ...cellWords(tileName(place), `sheet ${number}`, { min: [left, low], max: [right, high] }, outlines),
    ];
  });
  return [...outlines, ...cells];
}

/** From the border of a cell to its words, and the greatest height of its name; mm, our convention. */
const INSIDE = 1;
const NAME = 4;

/** Where the words of a cell are tried, as shares of the way from left to right and from below up; and how large; our convention. */
const TRIED: readonly Pt[] = [
  [0, 1],
  [0, 0],
  [1, 1],
  [1, 0],
  ...[0.5, 0.25, 0.75].flatMap((x) => [0.5, 1, 0, 0.75, 0.25].map((y): Pt => [x, y])),
];
const SIZES = [1, 0.8, 0.6] as const;

/** The name of a sheet and its number in its cell, where no line of the outline is: rather large than in a corner. */
function cellWords(name: string, number: string, { min, max }: Box, outlines: readonly Mark[]): Mark[] {
  const most = Math.min(NAME, (max[1] - min[1]) / 4, (max[0] - min[0]) / 5);
  const around = ([x, y]: Pt, size: Pt, by: number): Box => ({
    min: [x - by, y - by],
    max: [x + size[0] + by, y + size[1] + by],
  });
  const options = SIZES.flatMap((share) => {
    const height = most * share;
    const size: Pt = [Math.max(letterWidth(name, height, true), letterWidth(number, height / 2)), 1.8 * height];
    const room = [0, 1].map((axis) => max[axis as 0] - min[axis as 0] - 2 * INSIDE - size[axis as 0]) as [
      number,
      number,
    ];
    return TRIED.map(([x, y]) => {
      const at: Pt = [min[0] + INSIDE + x * room[0], min[1] + INSIDE + y * room[1]];
      return { height, at, box: around(at, size, INSIDE / 2) };
    });
  });
  const { height, at } = options.find(({ box }) => clipMarks(outlines, box).length === 0) ?? options[0]!;
  return [textMark(name, [at[0], at[1] + 0.8 * height], height, { bold: true }), textMark(number, at, height / 2)];
}
