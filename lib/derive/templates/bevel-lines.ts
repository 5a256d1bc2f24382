import { formatNumber, type UnitSystem } from '../../units/format-length.ts';
import { degrees, type Mm, radians } from '../../units/mm.ts';
import type { FaceOutlines } from './face-view.ts';
import { lengthText } from './length-text.ts';
import { type ScribedStretch, scribedStretches } from './scribed-stretches.ts';

/** Faces that differ by less than this are cut square, mm: a pencil line is no finer. */
const SEEN = 0.05;

/** The tilt to set on the saw when the underside slopes along the table as well; nothing for a square cut. */
export function bevelLines({ near, far }: FaceOutlines, thickness: Mm, units: UnitSystem): string[] {
  if (!far) return [];
  const beyond = scribedStretches(far);
  const tilts = scribedStretches(near)
    .map((stretch, i) => ({ left: Math.min(stretch.a.x, stretch.b.x), tilt: tiltOf(stretch, beyond[i]!, thickness) }))
    .sort((a, b) => a.left - b.left)
    .map(({ tilt }) => tilt);
  const all = tilts.map((tilt) => tiltText(tilt, thickness, units));
  const same = all.every((text) => text === all[0]);
  const texts = same ? all.slice(0, 1) : all;
  return [
    `bevel of the scribed edge${same ? '' : ', from left to right'}: ${texts.join('; ')}`,
    'the dashed line is the edge on the far face; the saw line is outside both',
  ];
}

/** Degrees off square, positive where the far face is higher; from the distance of the two lines, square to them. */
function tiltOf({ a, b }: ScribedStretch, other: ScribedStretch, thickness: Mm): number {
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  const outward = (uy * (other.a.x - a.x) - ux * (other.a.y - a.y)) / Math.hypot(ux, uy);
  return degrees(Math.atan(outward / thickness));
}

/** The angle and what it comes to over the thickness, since a small one is planed rather than set. */
function tiltText(tilt: number, thickness: Mm, units: UnitSystem): string {
  const over = Math.tan(radians(Math.abs(tilt))) * thickness;
  if (over < SEEN) return 'square';
  return `${formatNumber(Math.abs(tilt), 2)} deg, far face ${lengthText(over, units)} ${tilt > 0 ? 'higher' : 'lower'}`;
}
