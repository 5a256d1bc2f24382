import { formatNumber } from '../../units/format-length.ts';
import { degrees, type Mm } from '../../units/mm.ts';
import type { FaceOutlines } from './face-view.ts';
import { type ScribedStretch, scribedStretches } from './scribed-stretches.ts';

/** Tilts that differ by less than this are one setting of the saw, degrees. */
const SAME = 1e-4;

/** The tilt to set on the saw when the underside slopes along the table as well; nothing for a square cut. */
export function bevelLines({ near, far }: FaceOutlines, thickness: Mm): string[] {
  if (!far) return [];
  const beyond = scribedStretches(far);
  const tilts = scribedStretches(near)
    .map((stretch, i) => ({ left: Math.min(stretch.a.x, stretch.b.x), tilt: tiltOf(stretch, beyond[i]!, thickness) }))
    .sort((a, b) => a.left - b.left)
    .map(({ tilt }) => tilt);
  const same = tilts.every((tilt) => Math.abs(tilt - tilts[0]!) < SAME);
  const texts = (same ? tilts.slice(0, 1) : tilts).map(tiltText);
  return [
    `bevel of the scribed edge${same ? '' : ', from left to right'}: ${texts.join('; ')}`,
    'the dashed line is the edge on the far face',
  ];
}

/** Degrees off square, positive where the far face is higher; from the distance of the two lines, square to them. */
function tiltOf({ a, b }: ScribedStretch, other: ScribedStretch, thickness: Mm): number {
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  const outward = (uy * (other.a.x - a.x) - ux * (other.a.y - a.y)) / Math.hypot(ux, uy);
  return degrees(Math.atan(outward / thickness));
}

function tiltText(tilt: number): string {
  const size = formatNumber(Math.abs(tilt), 2);
  if (size === '0') return 'square';
  return `${size} deg, ${tilt > 0 ? 'higher' : 'lower'} on the far face`;
}
