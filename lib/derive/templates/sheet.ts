import type { Box } from '../../drawing/bounds.ts';
import type { Entity } from '../../drawing/drawing.ts';
import type { Mark, Text } from '../../drawing/entity.ts';
import { explode } from '../../drawing/explode.ts';
import { type Style, sizes } from '../../drawing/style.ts';
import { textCorners } from '../../drawing/text-size.ts';
import { type BoxedRoom, boxed, grown, overlap, type Room, roomsOf } from './room.ts';

/** A template while it is being drawn: what is put down stays, and lettering asks for room. */
export interface Sheet {
  readonly style: Style;
  readonly entities: readonly Entity[];
  put(...entities: readonly Entity[]): void;
  /** Whether a room meets nothing that is down. */
  isClear(room: Room): boolean;
  /** Whether the lettering of a mark or a dimension, with the usual gap around it, meets nothing that is down. */
  isLegible(entity: Entity): boolean;
}

/** @param windows when given, a room is clear only where one of them holds all of it. */
export function newSheet(style: Style, windows?: readonly Box[]): Sheet {
  const entities: Entity[] = [];
  const taken: BoxedRoom[] = [];
  const { scale } = style;
  const marksOf = (entity: Entity): readonly Mark[] =>
    entity.kind === 'dim' ? explode(entity, style).entities : [entity];
  const isClear = (room: Room): boolean => {
    const asked = boxed(room);
    if (windows && !windows.some((window) => holds(window, asked))) return false;
    return !taken.some((other) => overlap(asked, other));
  };
  return {
    style,
    entities,
    put(...more) {
      entities.push(...more);
      taken.push(...more.flatMap((entity) => roomsOf(marksOf(entity), scale).map(boxed)));
    },
    isClear,
    isLegible: (entity) =>
      marksOf(entity)
        .filter((mark): mark is Text => mark.kind === 'text')
        .every((text) => isClear(grown(textCorners(text, scale), sizes(style).textGap / 2))),
  };
}

const holds = ({ min, max }: Box, { x, y }: BoxedRoom): boolean =>
  x[0] >= min[0] && x[1] <= max[0] && y[0] >= min[1] && y[1] <= max[1];

/** The first of some choices whose lettering is clear; the first of all when none is. */
export const firstLegible = <E extends Entity>(sheet: Sheet, choices: readonly [E, ...E[]]): E =>
  choices.find((choice) => sheet.isLegible(choice)) ?? choices[0];
