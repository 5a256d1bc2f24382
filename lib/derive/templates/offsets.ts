import type { Outline } from '../../geometry/outline.ts';
import type { Vec2 } from '../../geometry/vec.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import type { FaceOutlines } from './face-view.ts';
import { scribedCorners } from './scribed-stretches.ts';

/** From one station to the next: 2 in or 50 mm, common practice, no source. */
const STEP: { readonly [U in UnitSystem]: Mm } = { in: 50.8, mm: 50 };

/** A corner this near to a station takes its place, mm: a pencil line is no finer. */
const NEAR = 0.05;

/** Which line of the template an offset is of. */
export type OffsetLine = 'near' | 'far' | 'designed';

/** Heights of the scribed edge over the base line at one distance from the center line, sharp corners before any relief. */
export interface Station {
  /** mm, to the left and to the right of the center line. */
  readonly distance: Mm;
  /** mm over the base line, absent where the edge does not reach. */
  readonly left: { readonly [L in OffsetLine]?: Mm };
  readonly right: { readonly [L in OffsetLine]?: Mm };
  /** What is at this distance besides: "end", "ridge". */
  readonly words: readonly string[];
}

/** The scribed edge of a template as heights over the straight line at its foot. */
interface Offsets {
  readonly lines: readonly OffsetLine[];
  readonly stations: readonly Station[];
  /** Left and right are the same at every station. */
  readonly alike: boolean;
}

interface Corner {
  readonly distance: Mm;
  readonly word: string;
}

/** mm over the base line along a row of corners, by x. */
function heightOn(corners: readonly Vec2[], x: number): Mm | undefined {
  for (const [i, [bx, by]] of corners.entries()) {
    const [ax, ay] = corners[i - 1] ?? [bx, by];
    if (x < ax - NEAR || x > bx + NEAR || (i === 0 && Math.abs(x - bx) > NEAR)) continue;
    return bx === ax ? by : ay + ((by - ay) * (x - ax)) / (bx - ax);
  }
  return undefined;
}

function cornersOf(corners: readonly Vec2[], center: number): Corner[] {
  return corners.map(([x], i) => ({
    distance: Math.abs(x - center),
    word: i === 0 || i === corners.length - 1 ? 'end' : 'ridge',
  }));
}

/** Distances from the center line with what is there, from the center out. */
function distances(corners: readonly Corner[], step: Mm): { distance: Mm; words: string[] }[] {
  const most = Math.max(...corners.map((corner) => corner.distance));
  const found: { distance: Mm; words: string[] }[] = [];
  const steps = Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, k) => ({
    distance: k * step,
    word: '',
  }));
  for (const { distance, word } of [...corners, ...steps]) {
    const known = found.find((one) => Math.abs(one.distance - distance) < NEAR);
    if (!known) found.push({ distance, words: word === '' ? [] : [word] });
    else if (word !== '' && !known.words.includes(word)) known.words.push(word);
  }
  return found.sort((a, b) => a.distance - b.distance);
}

/** Edges of the reliefs, so that they can be marked at their distance. */
function reliefCorners(outline: Outline, center: number): Corner[] {
  return outline.flatMap((a, i): Corner[] => {
    if (a.surface !== 'relief.floor') return [];
    const b = outline[(i + 1) % outline.length]!;
    return [a.x, b.x].map((x) => ({ distance: Math.abs(x - center), word: 'edge of the relief' }));
  });
}

/** The offsets at every 2 in or 50 mm from the center line of the piece and at every corner. */
export function offsetsOf(outlines: FaceOutlines, units: UnitSystem): Offsets {
  const lines = (['near', 'far', 'designed'] as const).filter((line) => outlines[line]);
  const byX = (line: OffsetLine): readonly Vec2[] => [...scribedCorners(outlines[line]!)].sort((a, b) => a[0] - b[0]);
  const corners = new Map(lines.map((line) => [line, byX(line)]));
  const xs = outlines.near.map((p) => p.x);
  const center = (Math.min(...xs) + Math.max(...xs)) / 2;
  const marked = [
    ...lines.flatMap((line) => cornersOf(corners.get(line)!, center)),
    ...reliefCorners(outlines.near, center),
  ];
  const side = (hand: 1 | -1, distance: Mm): Station['left'] =>
    Object.fromEntries(
      lines.flatMap((line) => {
        const height = heightOn(corners.get(line)!, center + hand * distance);
        return height === undefined ? [] : [[line, height]];
      }),
    );
  const stations = distances(marked, STEP[units]).map(({ distance, words }) => ({
    distance,
    left: side(-1, distance),
    right: side(1, distance),
    words: distance < NEAR ? ['center line', ...words] : words,
  }));
  const alike = stations.every(({ left, right }) =>
    lines.every((line) => Math.abs((left[line] ?? -1) - (right[line] ?? -1)) < 1e-6),
  );
  return { lines, stations, alike };
}
