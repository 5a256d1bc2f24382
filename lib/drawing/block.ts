import { type Box, boundsOf } from './bounds.ts';
import type { Entity } from './drawing.ts';
import type { Pt } from './entity.ts';
import { explode } from './explode.ts';
import { textRoom } from './fit-text.ts';
import { move } from './move.ts';
import type { Style } from './style.ts';

/** Entities that keep together, with the room they take, dimensions and lettering included; model mm. */
export interface Block {
  readonly entities: readonly Entity[];
  readonly box: Box;
}

/** @throws RangeError when there is nothing in it. */
export const block = (entities: readonly Entity[], style: Style): Block => ({
  entities,
  box: roomOf(entities, style),
});

/** The box around entities, lettering as wide as it is in any usual face. @throws RangeError for none. */
export function roomOf(entities: readonly Entity[], style: Style): Box {
  const marks = entities.flatMap((one) => (one.kind === 'dim' ? explode(one, style).entities : [one]));
  const boxes = [
    boundsOf(
      marks.filter(({ kind }) => kind !== 'text'),
      style.scale,
    ),
    ...marks.map((mark) => (mark.kind === 'text' ? around(textRoom(mark, style.scale)) : undefined)),
  ].filter((box) => box !== undefined);
  if (boxes.length === 0) throw new RangeError('a block of a sheet has nothing in it');
  return around(boxes.flatMap(({ min, max }) => [min, max]));
}

function around(points: readonly Pt[]): Box {
  const [x, y] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return { min: [Math.min(...x), Math.min(...y)], max: [Math.max(...x), Math.max(...y)] };
}

export const widthOf = ({ box }: Pick<Block, 'box'>): number => box.max[0] - box.min[0];
export const heightOf = ({ box }: Pick<Block, 'box'>): number => box.max[1] - box.min[1];

/** The same block elsewhere. */
export const moveBlock = ({ entities, box }: Block, by: Pt): Block => ({
  entities: entities.map((one) => move(one, by)),
  box: { min: [box.min[0] + by[0], box.min[1] + by[1]], max: [box.max[0] + by[0], box.max[1] + by[1]] },
});
