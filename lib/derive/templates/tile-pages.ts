import { clipMarks } from '../../drawing/clip-marks.ts';
import type { Mark } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import type { Page } from '../../drawing/page.ts';
import { moveMark } from '../../drawing/place.ts';
import { printSheet } from '../../drawing/print-sheet.ts';
import { crossMarks, tileCrosses } from '../../drawing/tile-crosses.ts';
import { type TilePlace, tileName, tileWindow, windowOn } from '../../drawing/tile-grid.ts';
import { coverPage } from './cover-page.ts';
import type { Heading } from './heading.ts';
import { nameLine, revisionLine } from './note-lines.ts';
import type { PrintPaper } from './print-papers.ts';
import { tablePages } from './table-pages.ts';
import type { Template } from './templates.ts';
import { tiledMarks } from './tiled-marks.ts';
import { tilingOf } from './tiling.ts';

/** A template for an office printer: a cover with the map of the sheets, notes and tables, and the sheets to be joined. */
export function tilePages(template: Template, paper: PrintPaper, heading: Heading): readonly Page[] {
  const tiling = tilingOf(template, paper);
  const { grid, tiles } = tiling;
  const marks = tiledMarks(template, tiling, heading.units);
  const crosses = tileCrosses(grid, tiles, marks);
  const { min, max } = windowOn(grid.sheet);
  const border: Mark = {
    kind: 'poly',
    layer: LAYERS.RULE,
    points: [min, [max[0], min[1]], max, [min[0], max[1]]],
    closed: true,
  };
  const tilePage = (place: TilePlace, k: number): Page => {
    const window = tileWindow(grid, place);
    const own = crosses.filter(
      ({ at: [x, y] }) => x > window.min[0] && x < window.max[0] && y > window.min[1] && y < window.max[1],
    );
    const seen = [...clipMarks(marks, window), ...own.flatMap(({ at, number }) => crossMarks(at, number))];
    const by = [min[0] - window.min[0], min[1] - window.min[1]] as const;
    const shown = seen.map((mark) => moveMark(mark, ([x, y]) => [x + by[0], y + by[1]]));
    const count = `sheet ${k + 1} of ${tiles.length}; lay crosses of one number over each other`;
    const words = [`${nameLine(template.face)}; ${count}`, revisionLine(heading)] as const;
    return printSheet(grid.sheet, tileName(place), words, [border, ...shown]);
  };
  return [
    coverPage(template, tiling, paper, heading),
    ...tablePages(template.face, paper, heading),
    ...tiles.map(tilePage),
  ];
}
