import type { EdgeProfile } from '../../model/feature.ts';

/** One row of points along a profile: how far in from the edge, how far down from the face, mm. */
export interface ProfileRow {
  readonly inset: number;
  readonly depth: number;
}

/** Facets of a quarter round, 22.5 degrees each: a 3 mm radius is met within 0.06 mm. */
const QUARTER = 4;

/** Rows of a profile from the face to the edge; a square arris is one row. */
export function profileRows(profile: EdgeProfile | undefined): ProfileRow[] {
  if (!profile) return [{ inset: 0, depth: 0 }];
  if (profile.kind === 'chamfer') {
    return [
      { inset: profile.width, depth: 0 },
      { inset: 0, depth: profile.width },
    ];
  }
  const r = profile.radius;
  return Array.from({ length: QUARTER + 1 }, (_, k) => {
    const turn = (k * Math.PI) / 2 / QUARTER;
    if (k === 0) return { inset: r, depth: 0 };
    if (k === QUARTER) return { inset: 0, depth: r };
    return { inset: r * (1 - Math.sin(turn)), depth: r * (1 - Math.cos(turn)) };
  });
}
