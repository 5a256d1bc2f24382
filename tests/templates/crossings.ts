import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { Mark, Pt, Text } from '../../lib/drawing/entity.ts';
import { flatten } from '../../lib/drawing/flatten.ts';
import { textCorners } from '../../lib/drawing/text-size.ts';

type Segment = readonly [Pt, Pt];

/** Points along a circle from one angle by another, degrees. */
function around([cx, cy]: Pt, radius: number, from: number, span: number): Segment[] {
  const n = Math.max(1, Math.ceil(Math.abs(span) / 2));
  const at = (k: number): Pt => {
    const angle = ((from + (span * k) / n) * Math.PI) / 180;
    return [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)];
  };
  return Array.from({ length: n }, (_, k) => [at(k), at(k + 1)]);
}

/** A side with a bulge, in short straight pieces: the bulge is the tangent of a quarter of the sweep. */
function curved(a: Pt, b: Pt, bulge: number): Segment[] {
  if (bulge === 0) return [[a, b]];
  const sweep = 4 * Math.atan(bulge);
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const height = 1 / (2 * Math.tan(sweep / 2));
  const center: Pt = [(a[0] + b[0]) / 2 - dy * height, (a[1] + b[1]) / 2 + dx * height];
  const start = Math.atan2(a[1] - center[1], a[0] - center[0]);
  const radius = Math.hypot(a[0] - center[0], a[1] - center[1]);
  return around(center, radius, (start * 180) / Math.PI, (sweep * 180) / Math.PI);
}

function linesOf(mark: Mark): Segment[] {
  switch (mark.kind) {
    case 'poly': {
      const ring = mark.closed ? [...mark.points, mark.points[0]!] : mark.points;
      return ring.slice(1).flatMap((b, i) => curved([ring[i]![0], ring[i]![1]], [b[0], b[1]], ring[i]![2] ?? 0));
    }
    case 'arc':
      return around(mark.center, mark.radius, mark.start, (mark.end - mark.start + 720) % 360 || 360);
    case 'circle':
      return around(mark.center, mark.radius, 0, 360);
    case 'solid':
      return mark.corners.map((p, i) => [p, mark.corners[(i + 1) % mark.corners.length]!]);
    case 'text':
      return [];
  }
}

/** The stretch of a line inside a box, by cutting it at each side in turn. */
function entersBox([a, b]: Segment, low: Pt, high: Pt): boolean {
  let [from, to] = [0, 1];
  for (const k of [0, 1] as const) {
    const step = b[k] - a[k];
    if (Math.abs(step) < 1e-12) {
      if (a[k] <= low[k] || a[k] >= high[k]) return false;
      continue;
    }
    const [p, q] = [(low[k] - a[k]) / step, (high[k] - a[k]) / step];
    [from, to] = [Math.max(from, Math.min(p, q)), Math.min(to, Math.max(p, q))];
  }
  return to - from > 1e-9;
}

/** The room of a lettering, touching not counted, and how a point looks from along its line. */
function room(text: Text, scale: number) {
  const corners = textCorners(text, scale);
  const turn = (-(text.rotation ?? 0) * Math.PI) / 180;
  const seen = ([x, y]: Pt): Pt => [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
  const points = corners.map(seen);
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  const low: Pt = [Math.min(...xs) + 0.05, Math.min(...ys) + 0.05];
  const high: Pt = [Math.max(...xs) - 0.05, Math.max(...ys) - 0.05];
  const sides: Segment[] = corners.map((p, i) => [p, corners[(i + 1) % 4]!]);
  const entered = ([a, b]: Segment): boolean => entersBox([seen(a), seen(b)], low, high);
  return { text: text.text, sides, entered };
}

/** What is written over what, in words; empty when every lettering stands clear. A box of text is that of the library. */
export function crossings(drawing: Drawing): string[] {
  const marks = flatten(drawing);
  const rooms = marks.flatMap((mark) => (mark.kind === 'text' ? [room(mark, drawing.style.scale)] : []));
  const overTexts = rooms.flatMap((one, i) =>
    rooms
      .slice(i + 1)
      .filter((other) => other.sides.some(one.entered) || one.sides.some(other.entered))
      .map((other) => `"${one.text}" over "${other.text}"`),
  );
  const overLines = marks.flatMap((mark) => {
    const lines = linesOf(mark);
    return rooms.filter((one) => lines.some(one.entered)).map((one) => `"${one.text}" over ${mark.layer.name}`);
  });
  return [...overTexts, ...overLines];
}

/** Lettering that does not read from the bottom or from the right of the sheet: turned back, or leaning past upright. */
export const upsideDown = (drawing: Drawing): string[] =>
  flatten(drawing).flatMap((mark) => {
    if (mark.kind !== 'text') return [];
    const turn = ((((mark.rotation ?? 0) + 180) % 360) + 360) % 360;
    return turn < 105 || turn > 285.001 ? [`"${mark.text}" is turned by ${mark.rotation}`] : [];
  });
