import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { Mark, Pt, Text } from '../../lib/drawing/entity.ts';
import { roomFor } from '../../lib/drawing/fit-text.ts';
import { flatten } from '../../lib/drawing/flatten.ts';

/** Touching is not crossing: so much is taken off every box, paper mm. */
const SHRINK = 0.1;

/** Longest chord of an arc, degrees. */
const STEP = 5;

/** Letters and signs that reach below the baseline, and how far in capital heights (Noto Sans, measured). */
const TAILS = /[gjpqyQ()[\]{},;_]/;
const TAIL = 0.34;

const START = { left: 0, center: -0.5, right: -1 } as const;
const RISE = { baseline: 0, middle: -0.5, top: -1 } as const;

/** The four corners of a lettering as wide as it is in the widest of the usual faces. */
function cornersOf(text: Text, scale: number): readonly [Pt, Pt, Pt, Pt] {
  const height = text.height * scale;
  const turn = ((text.rotation ?? 0) * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const width = roomFor(text.text, height, text.bold);
  const left = START[text.align ?? 'left'] * width;
  const low = RISE[text.valign ?? 'baseline'] * height - (TAILS.test(text.text) ? TAIL * height : 0);
  const high = (RISE[text.valign ?? 'baseline'] + 1) * height;
  const at = (x: number, y: number): Pt => [text.at[0] + c * x - s * y, text.at[1] + s * x + c * y];
  return [at(left, low), at(left + width, low), at(left + width, high), at(left, high)];
}

interface Hull {
  readonly points: readonly Pt[];
  readonly box: readonly [number, number, number, number];
}

/** Every lettering that stands on another, or on any line of the drawing, in words. */
export function collisions(drawing: Drawing): string[] {
  const { scale } = drawing.style;
  const marks = flatten(drawing);
  const texts = marks.filter((m): m is Text => m.kind === 'text' && m.text.trim() !== '');
  const boxes = texts.map((text) => hull(shrunk(cornersOf(text, scale), SHRINK * scale)));
  const lines = marks.flatMap((m) => segments(m).map((points) => ({ layer: m.layer.name, hull: hull(points) })));
  const found: string[] = [];
  boxes.forEach((box, i) => {
    boxes.slice(i + 1).forEach((other, k) => {
      if (meet(box, other)) found.push(`"${texts[i]!.text}" stands on "${texts[i + 1 + k]!.text}"`);
    });
    for (const { layer, hull: line } of lines) {
      if (meet(box, line)) found.push(`"${texts[i]!.text}" is crossed by a line on ${layer}`);
    }
  });
  return [...new Set(found)];
}

function hull(points: readonly Pt[]): Hull {
  const [x, y] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return { points, box: [Math.min(...x), Math.min(...y), Math.max(...x), Math.max(...y)] };
}

/** The corners of a text box, moved toward each other. */
function shrunk([a, b, c, d]: readonly [Pt, Pt, Pt, Pt], by: number): Pt[] {
  const unit = (p: Pt, q: Pt): Pt => {
    const size = Math.hypot(q[0] - p[0], q[1] - p[1]);
    return [((q[0] - p[0]) / size) * by, ((q[1] - p[1]) / size) * by];
  };
  const [u, v] = [unit(a, b), unit(a, d)];
  return [
    [a[0] + u[0] + v[0], a[1] + u[1] + v[1]],
    [b[0] - u[0] + v[0], b[1] - u[1] + v[1]],
    [c[0] - u[0] - v[0], c[1] - u[1] - v[1]],
    [d[0] + u[0] - v[0], d[1] + u[1] - v[1]],
  ];
}

/** Straight pieces of what is drawn; a bulge as its chord and its middle. */
function segments(mark: Mark): Pt[][] {
  if (mark.kind === 'text') return [];
  if (mark.kind === 'solid') return [[...mark.corners]];
  if (mark.kind === 'poly') {
    const points = mark.closed ? [...mark.points, mark.points[0]!] : mark.points;
    return points.slice(1).map((q, k) => {
      const p = points[k]!;
      const bulge = p[2] ?? 0;
      const sag: Pt = [
        (p[0] + q[0]) / 2 + ((q[1] - p[1]) * bulge) / 2,
        (p[1] + q[1]) / 2 - ((q[0] - p[0]) * bulge) / 2,
      ];
      return bulge === 0
        ? [
            [p[0], p[1]],
            [q[0], q[1]],
          ]
        : [[p[0], p[1]], sag, [q[0], q[1]]];
    });
  }
  const [start, span] = mark.kind === 'arc' ? [mark.start, (mark.end - mark.start + 720) % 360 || 360] : [0, 360];
  const at = (turn: number): Pt => [
    mark.center[0] + mark.radius * Math.cos((turn * Math.PI) / 180),
    mark.center[1] + mark.radius * Math.sin((turn * Math.PI) / 180),
  ];
  const count = Math.ceil(span / STEP);
  return Array.from({ length: count }, (_, k) => [
    at(start + (span * k) / count),
    at(start + (span * (k + 1)) / count),
  ]);
}

/** Whether two convex shapes share a point: no side of either parts them. */
function meet(a: Hull, b: Hull): boolean {
  if (a.box[2] < b.box[0] || b.box[2] < a.box[0] || a.box[3] < b.box[1] || b.box[3] < a.box[1]) return false;
  return ![...normals(a), ...normals(b)].some(([x, y]) => {
    const [lowA, highA] = reach(a, x, y);
    const [lowB, highB] = reach(b, x, y);
    return highA < lowB || highB < lowA;
  });
}

const normals = ({ points }: Hull): Pt[] =>
  points.map((p, k) => {
    const q = points[(k + 1) % points.length]!;
    return [p[1] - q[1], q[0] - p[0]];
  });

function reach({ points }: Hull, x: number, y: number): readonly [number, number] {
  const values = points.map((p) => p[0] * x + p[1] * y);
  return [Math.min(...values), Math.max(...values)];
}
