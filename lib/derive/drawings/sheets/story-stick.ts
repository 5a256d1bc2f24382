import { toInner, toOuter } from '../../../geometry/frame.ts';
import { heightAt } from '../../../geometry/surface.ts';
import type { Vec2 } from '../../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../../model/assembly.ts';
import type { Mortise } from '../../../model/feature.ts';
import type { Joint, JointSide } from '../../../model/joint.ts';
import type { Part, PartId } from '../../../model/part.ts';
import type { Mm } from '../../../units/mm.ts';
import { topSection } from './top-section.ts';

/** A slot of a joint as it stands on a stick; mm from the reference end of the top. */
export interface StickSlot {
  readonly middle: Mm;
  /** From end to end, on the side that holds the tenon, and on the side that lets it move. */
  readonly tight: Vec2;
  readonly long: Vec2;
}

/** The two pieces of a joint, that with the tight slots first. */
export interface StickJoint {
  readonly tight: Part;
  readonly long: Part;
  /** mm of wood at the middle of the joint, from the show face to the underside. */
  readonly thickness: Mm;
}

/** What one stick tells: where the slots are, in every joint that has them there. */
export interface StoryStick {
  readonly top: Part;
  readonly length: Mm;
  /** Along the top. */
  readonly slots: readonly StickSlot[];
  readonly joints: readonly StickJoint[];
  /** mm from the show face to the middle of every slot; thickness and depth of a slot. */
  readonly gauge: Mm;
  readonly width: Mm;
  readonly depth: Mm;
  /** mm that a tenon may move along its slot on the long side. */
  readonly play: Mm;
}

/** The sticks for the edge joints of a top: one when all joints are alike, else one for each kind; none without tenons. */
export function storySticks(assembly: Assembly): StoryStick[] {
  const top = topSection(assembly);
  if (!top) return [];
  const members = new Set<PartId>(top.part.members ?? []);
  const joints = assembly.joints.filter(
    ({ kind, sides, tenons }) => kind === 'edge' && tenons.length > 0 && sides.every(({ part }) => members.has(part)),
  );
  const sticks = new Map<string, StoryStick>();
  for (const joint of joints) {
    const { joints: pieces, ...found } = stickOf(assembly, top.part, joint);
    const key = likeness(found);
    const before = sticks.get(key)?.joints ?? [];
    sticks.set(key, { ...found, joints: [...before, ...pieces] });
  }
  return [...sticks.values()];
}

/** Alike when all numbers agree to this many decimals of a mm; our convention. */
const ALIKE = 4;

const likeness = ({ slots, gauge, width, depth }: Omit<StoryStick, 'joints'>): string =>
  [...slots.flatMap(({ tight, long }) => [...tight, ...long]), gauge, width, depth]
    .map((mm) => mm.toFixed(ALIKE))
    .join(' ');

function stickOf(assembly: Assembly, top: Part, { id, sides }: Joint): StoryStick {
  if (top.body.kind !== 'panel') throw new RangeError(`the top ${top.id} is no panel but a ${top.body.kind}`);
  const [a, b] = sides.map((side) => slotsOf(assembly, top, side)) as [PlacedSlot[], PlacedSlot[]];
  const [tight, long] = playOf(a) <= playOf(b) ? [a, b] : [b, a];
  const [first] = tight;
  if (!first || tight.length !== long.length) {
    throw new RangeError(`joint ${id} has ${a.length} slots on one side and ${b.length} on the other`);
  }
  const { underside, length } = top.body;
  return {
    top,
    length,
    slots: tight.map((slot, k) => ({ middle: slot.at[0], tight: spanOf(slot), long: spanOf(long[k]!) })),
    joints: [{ tight: first.part, long: long[0]!.part, thickness: heightAt(underside, length / 2, first.at[1]) }],
    gauge: first.at[2],
    width: first.slot.width,
    depth: first.slot.depth,
    play: playOf(long),
  };
}

/** A slot with its mouth in the frame of the top. */
interface PlacedSlot {
  readonly part: Part;
  readonly slot: Mortise;
  readonly at: readonly [Mm, Mm, Mm];
}

function slotsOf(assembly: Assembly, top: Part, { part: id, features }: JointSide): PlacedSlot[] {
  const part = partOf(assembly, id);
  const [from, to] = [placeOf(assembly, id), placeOf(assembly, top.id)];
  return part.features
    .filter((f): f is Mortise => f.kind === 'mortise' && features.includes(f.id))
    .map((slot) => ({ part, slot, at: toInner(to, toOuter(from, slot.at)) }))
    .sort((a, b) => a.at[0] - b.at[0]);
}

const playOf = (slots: readonly PlacedSlot[]): Mm => Math.max(0, ...slots.map(({ slot }) => slot.play));

const spanOf = ({ at, slot }: PlacedSlot): Vec2 => [at[0] - slot.length / 2, at[0] + slot.length / 2];

/** "T1-T2, T2-T3": the joints of a stick, the piece with the tight slots first. */
export const jointNames = ({ joints }: StoryStick): string =>
  joints.map(({ tight, long }) => `${tight.mark}-${long.mark}`).join(', ');
