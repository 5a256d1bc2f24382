import type { Pt, Text } from '../../drawing/entity.ts';
import { textRoom } from '../../drawing/fit-text.ts';

/** An upright rectangle, model mm. */
export interface Room {
  readonly low: Pt;
  readonly high: Pt;
}

/** The room of a text that is turned by quarters only. */
export function roomOf(text: Text, scale: number): Room {
  const corners = textRoom(text, scale);
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  return { low: [Math.min(...xs), Math.min(...ys)], high: [Math.max(...xs), Math.max(...ys)] };
}

const overlap = (a: Room, b: Room): boolean =>
  a.low[0] < b.high[0] && b.low[0] < a.high[0] && a.low[1] < b.high[1] && b.low[1] < a.high[1];

/** The first of some ways to set a text that meets nothing that is there; undefined when all do. */
export const freePlace = (ways: readonly Text[], taken: readonly Room[], scale: number): Text | undefined =>
  ways.find((way) => {
    const room = roomOf(way, scale);
    return !taken.some((other) => overlap(room, other));
  });
