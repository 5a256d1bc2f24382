import { hiddenBy } from './clip-edge.ts';
import type { CoverGrid } from './cover-grid.ts';
import type { FeatureEdge } from './feature-edge.ts';
import { gaps, type Interval, union } from './interval.ts';

/** Stretches shorter than this in the view are dropped, mm: they are what rounding leaves where a line grazes an outline. */
const SHORT = 0.01;

export interface Stretches {
  readonly visible: readonly Interval[];
  readonly hidden: readonly Interval[];
}

/** Which stretches of an edge are seen and which lie behind wood. */
export function stretches(edge: FeatureEdge, grid: CoverGrid): Stretches {
  if (edge.behind) return UNSEEN;
  const { from, to } = edge;
  const drop = SHORT / Math.hypot(to[0] - from[0], to[1] - from[1]);
  const found: Interval[] = [];
  grid(from, to, (cover) => {
    const interval = hiddenBy(cover, from, to);
    if (!interval) return undefined;
    found.push(interval);
    return interval[0] === 0 && interval[1] === 1 ? 'enough' : undefined;
  });
  if (found.length === 0) return SEEN;
  if (found.some(([start, end]) => start === 0 && end === 1)) return UNSEEN;
  const hidden = union(found, drop).filter(([start, end]) => end - start > drop);
  return { visible: gaps(hidden, drop), hidden };
}

const WHOLE: readonly Interval[] = [[0, 1]];
const SEEN: Stretches = { visible: WHOLE, hidden: [] };
const UNSEEN: Stretches = { visible: [], hidden: WHOLE };
