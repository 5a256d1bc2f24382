import { type Deg, degrees } from '../units/mm.ts';
import type { Pt } from './entity.ts';
import { along, angleOf, cross, direction, distance, dot, opposite, sub } from './vec.ts';

/** One bound of a sector. */
export interface Bound {
  /** Away from the vertex. */
  readonly ahead: Pt;
  readonly angle: Deg;
  /** The two points of the measured line, in the order in which the bound passes them. */
  readonly ray: readonly [Pt, Pt];
}

/** One of the four sectors of two crossing lines. */
export interface Sector {
  readonly vertex: Pt;
  /** Counter-clockwise from `start` to `end`, under 180. */
  readonly value: Deg;
  readonly start: Bound;
  readonly end: Bound;
}

/** Lines whose directions differ by less than this are taken as parallel: about 0.2 seconds of arc, ours. */
const PARALLEL = 1e-6;

type Line = readonly [Pt, Pt];

function crossing(first: Line, second: Line, d1: Pt, d2: Pt): Pt {
  const turn = cross(d1, d2);
  if (Math.abs(turn) < PARALLEL) {
    throw new RangeError(`two parallel lines have no angle to dimension: ${JSON.stringify([first, second])}`);
  }
  return along(first[0], d1, cross(sub(second[0], first[0]), d2) / turn);
}

const bound = (line: Line, ahead: Pt): Bound => ({
  ahead,
  angle: angleOf(ahead),
  ray: dot(sub(line[1], line[0]), ahead) > 0 ? line : [line[1], line[0]],
});

/**
 * The sector of two lines in which a point lies. It does not matter which line comes first, nor which point of a line.
 *
 * @throws RangeError for parallel lines, and for a point on one of them.
 */
export function sectorAt(first: Line, second: Line, at: Pt): Sector {
  const d1 = direction(first[0], first[1], 'the two points of the first line');
  const d2 = direction(second[0], second[1], 'the two points of the second line');
  const vertex = crossing(first, second, d1, d2);
  const seen = sub(at, vertex);
  const bounds = [bound(first, d1), bound(second, d2), bound(first, opposite(d1)), bound(second, opposite(d2))];
  const start = bounds.find((one) => bounds.some((two) => within(one, two, seen)));
  const end = bounds.find((two) => start && within(start, two, seen));
  if (!start || !end || distance(at, vertex) === 0) {
    throw new RangeError(`the point ${at[0]}, ${at[1]} of a dimension arc lies on one of the measured lines`);
  }
  return { vertex, value: degrees(Math.atan2(cross(start.ahead, end.ahead), dot(start.ahead, end.ahead))), start, end };
}

/** Whether `seen` lies strictly between two bounds that follow each other counter-clockwise, less than 180 apart. */
function within(start: Bound, end: Bound, seen: Pt): boolean {
  return cross(start.ahead, end.ahead) > 0 && cross(start.ahead, seen) > 0 && cross(seen, end.ahead) > 0;
}
