import type { Frame } from '../geometry/frame.ts';
import type { OutlinePoint } from '../geometry/outline.ts';
import { type ScribePoint, scribe } from '../geometry/scribe.ts';
import type { Surface } from '../geometry/surface.ts';
import type { Mm } from '../units/mm.ts';

/** The underside that a part is fitted to, and where the part stands below it. */
export interface FitTo {
  /** Heights over the floor, in the table's frame. */
  readonly underside: Surface;
  /** The part's own frame in the table's frame. */
  readonly frame: Frame;
  /** Room left for the ridge of the underside, so that the part never rides on it; default none. */
  readonly relief?: Relief;
}

export interface Relief {
  /** mm, across the ridge. */
  readonly width: Mm;
  /** mm, below the ridge. */
  readonly depth: Mm;
}

/** The line of the underside on the two faces of a part. */
export interface ScribedEdge {
  readonly near: ScribePoint[];
  readonly far: ScribePoint[];
}

/**
 * The edge of a part that meets the underside, on its reference face and on its far face.
 *
 * @throws RangeError when the two faces meet the underside in a different number of creases, or a relief does not fit.
 */
export function scribedEdge(fit: FitTo, level: 'x' | 'y', from: Mm, to: Mm, thickness: Mm): ScribedEdge {
  const line = (z: number): ScribePoint[] => relieve(scribe(fit.underside, fit.frame, level, from, to, z), fit.relief);
  const near = line(0);
  const far = line(thickness);
  if (near.map((p) => p.plane).join() !== far.map((p) => p.plane).join()) {
    throw new RangeError('the underside has a crease that runs out between the two faces of the part; turn or move it');
  }
  return { near, far };
}

function relieve(line: ScribePoint[], relief: Relief | undefined): ScribePoint[] {
  if (!relief || relief.depth === 0) return line;
  return line.flatMap((p, i) => {
    const before = line[i - 1];
    const after = line[i + 1];
    if (!before || !after) return [p];
    const half = relief.width / 2;
    if (p.along - half <= before.along || p.along + half >= after.along) {
      throw new RangeError(`a ridge relief ${relief.width} mm wide does not fit at ${p.along} mm`);
    }
    const slope = (q: ScribePoint): number => (q.height - p.height) / (q.along - p.along);
    const floor = p.height - relief.depth;
    return [
      { along: p.along - half, height: p.height - slope(before) * half, plane: 'relief.wall' },
      { along: p.along - half, height: floor, plane: 'relief.floor' },
      { along: p.along + half, height: floor, plane: 'relief.wall' },
      { along: p.along + half, height: p.height + slope(after) * half, plane: p.plane },
    ];
  });
}

const SQUARE = 1e-9;

/** True when both faces meet the underside along the same line, so that the cut is square to the face. */
export const isSquareCut = (edge: ScribedEdge): boolean =>
  edge.near.every((p, i) => {
    const q = edge.far[i]!;
    return Math.abs(p.along - q.along) < SQUARE && Math.abs(p.height - q.height) < SQUARE;
  });

/** Outline points along a scribed edge for a part whose level axis is x, walked towards smaller x. */
export const edgeAlongX = (line: readonly ScribePoint[]): OutlinePoint[] =>
  line
    .map((p, i) => ({ x: p.along, y: p.height, surface: i === 0 ? 'reference-end' : surfaceName(line[i - 1]!.plane) }))
    .reverse();

/** Outline points along a scribed edge for a part whose level axis is y, walked towards larger y. */
export const edgeAlongY = (line: readonly ScribePoint[]): OutlinePoint[] =>
  line.map((p, i) => ({
    x: p.height,
    y: p.along,
    surface: i === line.length - 1 ? 'far-edge' : surfaceName(p.plane),
  }));

const OWN_NAME = /^(relief|shoulder)/;

const surfaceName = (plane: string): string => (OWN_NAME.test(plane) ? plane : `underside.${plane}`);
