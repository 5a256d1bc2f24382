import type { LengthLook } from '../../../../drawing/style.ts';
import type { Outline } from '../../../../geometry/outline.ts';
import { heightAt } from '../../../../geometry/surface.ts';
import type { PanelBody } from '../../../../model/body.ts';
import type { Part } from '../../../../model/part.ts';
import { formatNumber } from '../../../../units/format-length.ts';
import { degrees, type Mm } from '../../../../units/mm.ts';
import { reliefs } from '../../../templates/relief.ts';
import { scribedStretches } from '../../../templates/scribed-stretches.ts';
import { sayLength } from '../say-length.ts';
import { exact } from './exact.ts';

/** Slopes that differ by less than this are one. */
const SAME = 1e-6;

/** The slope of a scribed edge or end, or of an underside, with the relief for its ridge; nothing for a square part. */
export function scribeWords({ body }: Part, look: LengthLook): string | undefined {
  if (body.kind === 'panel') return undersideWords(body, look);
  if (body.kind === 'slice') return undersideWords(body.of, look);
  if (body.kind !== 'prism') return undefined;
  const slopes = slopesOf(body.outline);
  if (slopes.length === 0) return undefined;
  const [first] = slopes;
  const alike = slopes.every(({ slope }) => Math.abs(slope - first!.slope) < SAME);
  const relief = reliefs(body.outline).map(
    ({ width, depth }) => `relief at the ridge ${sayLength(width, look)} wide, ${sayLength(depth, look)} deep`,
  );
  const far = body.far ? ['not square to the face: its template has the bevel'] : [];
  const each = alike
    ? [slopeText(first!.slope, look)]
    : slopes.map(({ slope, words }) => `${words} ${slopeText(slope, look)}`);
  return [...each, ...relief, ...far].join('; ');
}

/** A slope, and at which end or edge of the part it is. */
interface PlacedSlope {
  readonly slope: number;
  readonly words: string;
}

/** Rise over run of each scribed stretch, square to the edge or end that it replaces, from the datum on. */
function slopesOf(outline: Outline): PlacedSlope[] {
  const found = scribedStretches(outline).map(({ a, b }) => {
    const [x, y] = [Math.abs(b.x - a.x), Math.abs(b.y - a.y)];
    return { slope: Math.min(x, y) / Math.max(x, y), edge: x > y, at: x > y ? a.x + b.x : a.y + b.y };
  });
  found.sort((one, other) => one.at - other.at);
  return found.map(({ slope, edge }, k) => {
    const place = k === 0 ? 'reference' : k === found.length - 1 ? 'far' : '';
    return { slope, words: place === '' ? 'between' : `towards the ${place} ${edge ? 'end' : 'edge'}` };
  });
}

/** Degrees, and the rise in ten that a square or a bevel is set by. */
function slopeText(slope: number, look: LengthLook): string {
  if (slope < SAME) return 'level';
  const [run, words] = look.system === 'mm' ? [100, '100 mm'] : [254, '10"'];
  return `slope ${formatNumber(degrees(Math.atan(slope)), 2)} deg, ${sayLength(run * slope, look)} in ${words}`;
}

/** Thickness on the center line and at the edges, in the numbers of the views, and the slope between them. */
function undersideWords({ underside, length, width }: PanelBody, look: LengthLook): string {
  const at = (y: Mm): Mm => heightAt(underside, length / 2, y);
  const [middle, left, right] = [at(0), at(-width / 2), at(width / 2)];
  const say = (mm: Mm): string => sayLength(exact(mm), look);
  if (Math.abs(middle - left) < SAME && Math.abs(middle - right) < SAME) return `top ${say(middle)} thick throughout`;
  const edges = Math.abs(left - right) < SAME ? `${say(left)} at both edges` : `${say(left)} left, ${say(right)} right`;
  // Of the outer halves of each half: the ridge of a measured underside may be beside the center line.
  const slope = (side: 1 | -1): number => Math.abs(at((side * width) / 4) - at((side * width) / 2)) / (width / 4);
  const slopes = [slope(-1), slope(1)] as const;
  const each =
    Math.abs(slopes[0] - slopes[1]) < SAME
      ? slopeText(slopes[0], look)
      : `left ${slopeText(slopes[0], look)}; right ${slopeText(slopes[1], look)}`;
  return `top ${say(middle)} thick on the center line, ${edges}; ${each}`;
}

/** Whether a part is scribed or tapered, so that its lengths are told in both systems. */
export const isTapered = ({ body }: Part): boolean =>
  body.kind === 'panel' || body.kind === 'slice' || (body.kind === 'prism' && slopesOf(body.outline).length > 0);
