import type { Outline } from '../../geometry/outline.ts';
import type { Mm } from '../../units/mm.ts';
import { scribedCorners } from './scribed-stretches.ts';

/** The room left for the ridge of the underside. */
export interface ReliefSize {
  readonly width: Mm;
  /** mm, below the sharp corner of the V. */
  readonly depth: Mm;
  /** mm, over the lower edge of the sheet's part. */
  readonly floor: Mm;
}

/** The reliefs of an outline on the sheet. */
export function reliefs(outline: Outline): ReliefSize[] {
  const corners = scribedCorners(outline);
  return outline.flatMap((a, i): ReliefSize[] => {
    if (a.surface !== 'relief.floor') return [];
    const b = outline[(i + 1) % outline.length]!;
    const corner = corners.find(([x]) => (x - a.x) * (x - b.x) < 0);
    return corner ? [{ width: Math.abs(b.x - a.x), depth: corner[1] - a.y, floor: a.y }] : [];
  });
}
