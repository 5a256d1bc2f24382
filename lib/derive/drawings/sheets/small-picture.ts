import { fits } from '../../../drawing/arrange.ts';
import { type Block, block } from '../../../drawing/block.ts';
import type { Box } from '../../../drawing/bounds.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { Pt, Vertex } from '../../../drawing/entity.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import type { Style } from '../../../drawing/style.ts';
import { viewEntities } from '../view-entities.ts';
import type { ViewLine } from '../view-line.ts';
import { viewBlock } from './view-block.ts';

/** Room for the name below, paper mm; our convention. */
const NAME = 9.5;

/** The piece as one sees it, as large as a room allows: as marks, since it is to no scale. Undefined when its name has no room. */
export function smallPicture(lines: readonly ViewLine[], room: Box, style: Style): Block | undefined {
  const drawn = viewEntities(lines);
  const { box } = block(drawn, style);
  const [width, height] = [box.max[0] - box.min[0], box.max[1] - box.min[1]];
  const factor = Math.min(
    (room.max[0] - room.min[0]) / width,
    (room.max[1] - room.min[1] - NAME * style.scale) / height,
  );
  if (!(factor > 0)) return undefined;
  const small = ([x, y]: Pt | Vertex): Pt => [x * factor, y * factor];
  const entities = drawn.map(
    ({ points, closed }): Entity => ({ kind: 'poly', layer: LAYERS.PICTURE, points: points.map(small), closed }),
  );
  const picture = viewBlock('Picture, no scale', entities, style);
  return fits(picture, room) ? picture : undefined;
}
