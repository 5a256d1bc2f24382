import type { Deg, Mm } from '../units/mm.ts';
import type { Poly, Pt } from './entity.ts';
import { LAYERS } from './layers.ts';
import type { Style } from './style.ts';
import { along, dot, left, polar } from './vec.ts';

export interface HatchLook {
  readonly angle: Deg;
  /** From line to line, paper mm. */
  readonly spacing: Mm;
}

/** 45 degrees (ISO 128-50, from memory); the spacing is common practice, no source. */
export const HATCH: HatchLook = { angle: 45, spacing: 2.5 };

/** A stretch shorter than this is no line, paper mm; our convention. */
const SHORT = 0.05;

/** Slanting lines over an area with holes, even-odd; model mm. Lines of one angle lie on one raster over the whole sheet. */
export function hatch(loops: readonly (readonly Pt[])[], style: Style, look: HatchLook = HATCH): Poly[] {
  const ahead = polar(look.angle);
  const across = left(ahead);
  const step = look.spacing * style.scale;
  const heights = loops.flat().map((p) => dot(p, across));
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const lines: Poly[] = [];
  for (let k = Math.floor(low / step) + 1; k * step < high; k++) {
    const stops = crossings(loops, ahead, across, k * step);
    for (let i = 0; i + 1 < stops.length; i += 2) {
      const [from, to] = [stops[i]!, stops[i + 1]!];
      if (to - from < SHORT * style.scale) continue;
      const foot = along([0, 0], across, k * step);
      const points = [along(foot, ahead, from), along(foot, ahead, to)];
      lines.push({ kind: 'poly', layer: LAYERS.HATCH, points, closed: false });
    }
  }
  return lines;
}

/** Where a line crosses the borders, along it. A corner on the line counts as above it. */
function crossings(loops: readonly (readonly Pt[])[], ahead: Pt, across: Pt, height: number): number[] {
  const found: number[] = [];
  for (const loop of loops) {
    loop.forEach((p, i) => {
      const q = loop[(i + 1) % loop.length]!;
      const [a, b] = [dot(p, across) - height, dot(q, across) - height];
      if (a < 0 === b < 0) return;
      found.push(dot(p, ahead) + (dot(q, ahead) - dot(p, ahead)) * (a / (a - b)));
    });
  }
  return found.sort((x, y) => x - y);
}
