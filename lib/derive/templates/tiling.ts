import { type Box, boundsOf } from '../../drawing/bounds.ts';
import type { Entity } from '../../drawing/drawing.ts';
import type { Mark } from '../../drawing/entity.ts';
import { gridOver, gridSize, neededTiles, type Sheet, type TileGrid, type TilePlace } from '../../drawing/tile-grid.ts';
import { flatMarks } from './flat-marks.ts';
import type { Template } from './templates.ts';

/** Of white around the outermost line, mm; our convention. */
const WHITE = 2;

/** How a template is cut up into sheets of paper. */
export interface Tiling {
  readonly grid: TileGrid;
  /** The sheets that are printed, in the order of reading. */
  readonly tiles: readonly TilePlace[];
}

const isLine = (entity: Entity): boolean => entity.kind === 'poly' && entity.layer.name !== 'REFERENCE';

/** The lines that a template is worked to: what sheets are printed for. */
export const workLines = ({ drawn }: Template): readonly Mark[] =>
  drawn.entities.filter((entity): entity is Mark => entity.kind !== 'dim' && isLine(entity));

/** The fewest sheets, upright or lying, that show every line of a template. */
export function tilingOf(template: Template, paper: Sheet): Tiling {
  const lines = workLines(template);
  const { min, max } = boundsOf(lines, 1)!;
  const core: Box = { min: [min[0] - WHITE, min[1] - WHITE], max: [max[0] + WHITE, max[1] + WHITE] };
  const all = boundsOf(flatMarks(template.drawn), 1)!;
  const lying: Sheet = { width: paper.height, height: paper.width };
  const ways = [paper, lying].map((sheet): Tiling => {
    const grid = gridOver(core, all, sheet);
    return { grid, tiles: neededTiles(grid, lines) };
  });
  return ways.reduce((best, way) => (isLess(way, best) ? way : best));
}

/** Fewer sheets, or as many from which more of the drawing can be seen. */
function isLess(way: Tiling, best: Tiling): boolean {
  if (way.tiles.length !== best.tiles.length) return way.tiles.length < best.tiles.length;
  const area = ({ grid }: Tiling): number => gridSize(grid)[0] * gridSize(grid)[1];
  return area(way) > area(best) + 1;
}
