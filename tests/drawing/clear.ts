import type { Linear } from '../../lib/drawing/dim.ts';
import type { Mark, Pt, Text } from '../../lib/drawing/entity.ts';
import { explode } from '../../lib/drawing/explode.ts';
import type { Style } from '../../lib/drawing/style.ts';
import { textCorners } from '../../lib/drawing/text-size.ts';

interface Room {
  readonly low: Pt;
  readonly high: Pt;
}

/** The room of a text without its tails; texts here are turned by quarters only. */
function room(text: Text, scale: number): Room {
  const corners = textCorners(text, scale);
  const shrink = 0.05; // touching is not crossing
  const [x, y] = [corners.map((corner) => corner[0]), corners.map((corner) => corner[1])];
  return {
    low: [Math.min(...x) + shrink, Math.min(...y) + shrink],
    high: [Math.max(...x) - shrink, Math.max(...y) - shrink],
  };
}

const overlap = (a: Room, b: Room): boolean =>
  a.low[0] < b.high[0] && b.low[0] < a.high[0] && a.low[1] < b.high[1] && b.low[1] < a.high[1];

/** Whether a line enters a room: it is cut to the room side by side. */
function enters(from: Pt, to: Pt, { low, high }: Room): boolean {
  let [start, end] = [0, 1];
  for (const axis of [0, 1] as const) {
    const step = to[axis] - from[axis];
    if (step === 0 && (from[axis] <= low[axis] || from[axis] >= high[axis])) return false;
    if (step === 0) continue;
    const [a, b] = [(low[axis] - from[axis]) / step, (high[axis] - from[axis]) / step];
    start = Math.max(start, Math.min(a, b));
    end = Math.min(end, Math.max(a, b));
  }
  return start < end;
}

const cuts = (mark: Mark, inside: Room): boolean => {
  if (mark.kind !== 'poly') return false;
  const [a, b] = mark.points;
  return enters([a![0], a![1]], [b![0], b![1]], inside);
};

/** What collides in a stack of straight dimensions, in words; empty when text meets neither text nor line. */
export function collisions(dims: readonly Linear[], style: Style): readonly string[] {
  const made = dims.map((dim) => explode(dim, style));
  const texts = made.flatMap(({ entities }) => entities.filter((mark): mark is Text => mark.kind === 'text'));
  const lines = made.flatMap(({ entities }) => entities.filter((mark) => mark.kind === 'poly'));
  const rooms = texts.map((text) => room(text, style.scale));
  const found: string[] = [];
  rooms.forEach((one, i) => {
    rooms.slice(i + 1).forEach((other, j) => {
      if (overlap(one, other)) found.push(`${texts[i]!.text} over ${texts[i + 1 + j]!.text}`);
    });
    for (const line of lines) {
      if (cuts(line, one)) found.push(`${texts[i]!.text} crossed by ${JSON.stringify(line.points)}`);
    }
  });
  return found;
}
