import { toOuter } from '../../../geometry/frame.ts';
import { heightAt } from '../../../geometry/surface.ts';
import { add, scale, type Vec3 } from '../../../geometry/vec.ts';
import type { Assembly } from '../../../model/assembly.ts';
import { partOf } from '../../../model/assembly.ts';
import type { PanelBody } from '../../../model/body.ts';
import type { Mortise } from '../../../model/feature.ts';
import type { Joint } from '../../../model/joint.ts';
import type { Mm } from '../../../units/mm.ts';
import { toView, type View } from '../view.ts';
import type { TopSection } from './top-section.ts';

/** A place across a top at which its thickness is told. */
export interface TopColumn {
  readonly name: string;
  /** mm from the center line, outwards. */
  readonly out: Mm;
  readonly thickness: Mm;
  /** mm over the floor. */
  readonly underside: Mm;
  /** Thickness as it was designed; absent when the top was not measured. */
  readonly designed?: Mm;
  /** A joint or the edge; otherwise a place to measure. */
  readonly seam: boolean;
}

/** A slot for a loose tenon in a half of a top; mm from the center line outwards, and below the show face. */
export interface TopSlot {
  /** The joint it belongs to. */
  readonly seam: Mm;
  /** Of its thin end: from the mouth to the floor, whichever lies further out. */
  readonly far: Mm;
  readonly near: Mm;
  readonly upper: Mm;
  readonly lower: Mm;
  /** Wood under its far lower corner, mm. */
  readonly cover: Mm;
}

/** The boards between two joints. */
export interface TopStrip {
  /** From the show face down. */
  readonly marks: readonly string[];
  readonly width: Mm;
  /** Middle, mm from the center line outwards. */
  readonly middle: Mm;
}

/** One half of a top where it is cut. */
export interface HalfTop {
  readonly strips: readonly TopStrip[];
  readonly columns: readonly TopColumn[];
  /** How much thinner the top gets outwards, mm a mm: of the outer half, since a ridge may be beside the center line. */
  readonly slope: number;
  readonly slots: readonly TopSlot[];
}

/** Shares of the half width at which a taper is read: five stations from center line to edge (common practice, no source). */
const STATIONS = [0.25, 0.5, 0.75];

/** Nearer than this a station is a joint, mm. */
const SAME: Mm = 0.5;

/**
 * The half of a top that a view shows on the right (`side` 1) or on the left (-1) of the center line, cut at `along`.
 *
 * @param designed the top before it was measured; left out when it was not.
 */
export function halfTop(
  assembly: Assembly,
  top: TopSection,
  view: View,
  side: 1 | -1,
  along: Mm,
  designed?: PanelBody,
): HalfTop {
  const { frame, body, half } = top;
  const outwards = (y: Mm): Mm => side * toView(view, toOuter(frame, [along, y, 0]))[0];
  const height = toOuter(frame, [0, 0, 0])[2];
  const thicknessOf = (panel: PanelBody, out: Mm): Mm => heightAt(panel.underside, along, outwards(1) > 0 ? out : -out);
  const column = (name: string, out: Mm, seam: boolean): TopColumn => {
    const thickness = thicknessOf(body, out);
    const before = designed ? { designed: thicknessOf(designed, out) } : {};
    return { name, out, thickness, underside: height - thickness, seam, ...before };
  };
  const joints = edgeJoints(assembly, top)
    .map((joint) => ({ joint, out: outwards(seamOf(assembly, joint)) }))
    .filter(({ out }) => out > -SAME && out < half - SAME);
  const seams = [
    ...joints.map(({ joint, out }) =>
      column(out < SAME ? `${nameOf(joint)}, center` : nameOf(joint), Math.max(0, out), true),
    ),
    column('edge', half, true),
  ];
  const others = [0, ...STATIONS.map((share) => share * half)]
    .filter((out) => !seams.some((seam) => Math.abs(seam.out - out) < SAME))
    .map((out) => column(out === 0 ? 'center' : 'station', out, false));
  return {
    strips: stripsOf(assembly, top, outwards).filter(({ middle }) => middle > SAME),
    columns: [...seams, ...others].sort((a, b) => a.out - b.out),
    slope: (thicknessOf(body, half / 2) - thicknessOf(body, half)) / (half / 2),
    slots: joints.flatMap(({ joint }) => slotOf(assembly, top, joint, outwards, along)).sort((a, b) => a.far - b.far),
  };
}

/** Boards that lie over each other are one strip. */
function stripsOf(assembly: Assembly, { part }: TopSection, outwards: (y: Mm) => Mm): TopStrip[] {
  const found = new Map<Mm, TopStrip>();
  for (const id of part.members ?? []) {
    const { body, mark } = partOf(assembly, id);
    if (body.kind !== 'slice') continue;
    const middle = outwards((body.from + body.to) / 2);
    const marks = [...(found.get(middle)?.marks ?? []), mark];
    found.set(middle, { marks, middle, width: body.to - body.from });
  }
  return [...found.values()];
}

/** The glued edges that run through the show face, one for each line. */
function edgeJoints({ joints }: Assembly, { part }: TopSection): Joint[] {
  const members = new Set(part.members ?? []);
  return joints.filter(
    ({ kind, sides, id }) => kind === 'edge' && members.has(sides[0].part) && !id.endsWith('-under'),
  );
}

/** "joint 3" of `top/joint-3`. */
const nameOf = ({ id }: Joint): string => id.split('/').at(-1)!.replace('-', ' ');

/** Where a joint lies across the top, in its frame. */
function seamOf(assembly: Assembly, { sides }: Joint): Mm {
  const { body } = partOf(assembly, sides[0].part);
  if (body.kind !== 'slice') throw new RangeError(`strip ${sides[0].part} is no slice of its top`);
  return body.to;
}

/** The slot of a joint that reaches further out, at the station that is cut; none in a plain joint. */
function slotOf(
  assembly: Assembly,
  { body }: TopSection,
  { sides }: Joint,
  outwards: (y: Mm) => Mm,
  along: Mm,
): TopSlot[] {
  const found = sides.flatMap(({ part, features }) =>
    partOf(assembly, part).features.filter(
      (f): f is Mortise => f.kind === 'mortise' && features.includes(f.id) && Math.abs(f.at[0] - along) < SAME,
    ),
  );
  const slots = found.map((slot): TopSlot => {
    const floor: Vec3 = add(slot.at, scale(slot.into, slot.depth));
    const [near, far] = [outwards(slot.at[1]), outwards(floor[1])].sort((a, b) => a - b) as [Mm, Mm];
    const lower = slot.at[2] + slot.width / 2;
    const thin = far === outwards(floor[1]) ? floor[1] : slot.at[1];
    const cover = heightAt(body.underside, along, thin) - lower;
    return { seam: outwards(slot.at[1]), near, far, upper: slot.at[2] - slot.width / 2, lower, cover };
  });
  return slots.sort((a, b) => b.far - a.far).slice(0, 1);
}

/** Whether two halves are mirror images, to what a rule can show. */
export function mirrored(a: HalfTop, b: HalfTop): boolean {
  const close = (x: Mm, y: Mm): boolean => Math.abs(x - y) < 0.05;
  return (
    a.columns.length === b.columns.length &&
    a.slots.length === b.slots.length &&
    a.columns.every((c, k) => close(c.out, b.columns[k]!.out) && close(c.thickness, b.columns[k]!.thickness)) &&
    a.slots.every((s, k) => close(s.far, b.slots[k]!.far) && close(s.cover, b.slots[k]!.cover))
  );
}
