import { baseline } from '../../drawing/baseline.ts';
import { boundsOf } from '../../drawing/bounds.ts';
import type { Dim } from '../../drawing/dim.ts';
import type { Pt } from '../../drawing/entity.ts';
import type { Style } from '../../drawing/style.ts';
import type { Outline } from '../../geometry/outline.ts';
import type { Vec2 } from '../../geometry/vec.ts';
import { polyOf } from './face-poly.ts';
import type { PocketMark } from './pocket-marks.ts';
import { scribedCorners } from './scribed-stretches.ts';

/** Closer to the side of the part than this counts as on it, mm. */
const ON_SIDE = 1e-6;

/** Closer to the middle of the part than this a ridge lies on the center line, which is drawn, mm. */
const ON_CENTER = 1e-3;

/**
 * Running dimensions from the lower left corner, the longest outermost: pockets, a ridge off the middle and the
 * width below, pockets and heights of the scribed edge at the sides.
 */
export function linearDims(outline: Outline, marks: readonly PocketMark[], style: Style): Dim[] {
  const right = Math.max(...outline.map((p) => p.x));
  const datum: Pt = [0, 0];
  const across = marks.filter((m) => !m.axis || isUpright(m.axis)).flatMap((m) => places(m, 0));
  const up = marks.filter((m) => !m.axis || !isUpright(m.axis)).flatMap((m) => places(m, 1));
  const heights = scribedCorners(outline);
  const ridges = heights.slice(1, -1).filter(([x]) => Math.abs(x - right / 2) > ON_CENTER);
  const atRight = heights.filter((p) => p[0] > right - ON_SIDE);
  const atLeft = [...up, ...heights.filter((p) => p[0] <= right - ON_SIDE)];
  return [
    ...baseline([...across, ...ridges.map(([x]): Pt => [x, 0]), [right, 0]], datum, 'below', style, { edge: 0 }).dims,
    ...baseline(atLeft, datum, 'left', style, { edge: 0 }).dims,
    ...baseline(atRight, [right, 0], 'right', style, { edge: right }).dims,
  ];
}

/** Along one axis of the sheet: a mortise by its two ends, a hole by its middle. */
function places({ pocket, outline, center }: PocketMark, axis: 0 | 1): Pt[] {
  const at = (value: number): Pt => (axis === 0 ? [value, 0] : [0, value]);
  if (pocket.kind !== 'mortise') return [at(center[axis])];
  const { min, max } = boundsOf([polyOf('MORTISE', outline)], 1)!;
  return [at(min[axis]), at(max[axis])];
}

const isUpright = ([a, b]: readonly [Vec2, Vec2]): boolean => Math.abs(a[0] - b[0]) < 1e-6;
