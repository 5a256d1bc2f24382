import type { Vec2 } from '../../geometry/vec.ts';
import type { ViewLine } from './view-line.ts';

/** Lines that go on from each other, drawn without lifting the pen. */
export interface Chain {
  readonly points: readonly Vec2[];
  /** The last point leads back to the first. */
  readonly closed: boolean;
}

/** Ends in one square of this size meet, mm. */
const MEET = 0.01;

/** Cosine of the turn up to which a line goes on smoothly: 45 degrees. */
const SMOOTH = Math.SQRT1_2;

/**
 * Lines joined end to end where exactly two of them meet; `through` says whether corners are gone round as well. A dashed
 * line should stop there, so that its dashes meet in the corner, and go on over the facets of a curve.
 */
export function chainsOf(lines: readonly ViewLine[], through: 'corners' | 'curves'): Chain[] {
  const meetings = new Map<string, ViewLine[]>();
  for (const line of lines) {
    for (const end of [line.from, line.to]) {
      const list = meetings.get(keyOf(end));
      if (list) list.push(line);
      else meetings.set(keyOf(end), [line]);
    }
  }
  const used = new Set<ViewLine>();
  /** The line that goes on from `end`, the far end of a line that came from `before`. */
  const next = (before: Vec2, end: Vec2): Vec2 | undefined => {
    const meeting = meetings.get(keyOf(end))!;
    const line = meeting.find((l) => !used.has(l));
    if (meeting.length !== 2 || !line) return undefined;
    const far = keyOf(line.from) === keyOf(end) ? line.to : line.from;
    if (through === 'curves' && !isSmooth(before, end, far)) return undefined;
    used.add(line);
    return far;
  };
  const follow = (points: Vec2[]): Vec2[] => {
    for (;;) {
      const far = next(points.at(-2)!, points.at(-1)!);
      if (!far) return points;
      points.push(far);
    }
  };
  return lines.flatMap((line) => {
    if (used.has(line)) return [];
    used.add(line);
    const points = follow(follow([line.from, line.to]).reverse());
    const closed = points.length > 3 && keyOf(points[0]!) === keyOf(points.at(-1)!);
    return [{ points: closed ? points.slice(1) : points, closed }];
  });
}

const keyOf = ([x, y]: Vec2): string => `${Math.round(x / MEET)},${Math.round(y / MEET)}`;

function isSmooth(a: Vec2, b: Vec2, c: Vec2): boolean {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  return ux * vx + uy * vy > SMOOTH * Math.hypot(ux, uy) * Math.hypot(vx, vy);
}
