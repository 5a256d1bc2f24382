import { add, cross, length, sub, unit, type Vec3 } from '../../../geometry/vec.ts';
import type { EndSprings, FrameMember } from './frame-model.ts';
import { type TurnStiffness, turnStiffness, twistThrough } from './frame-springs.ts';

/** Number of ways in which the two ends of a member move. */
export const WAYS = 12;

/** A member ready for solving; matrices of 12 × 12 are stored row by row, `from` before `to`. */
export interface BuiltMember {
  /** In the member's frame: movements of its ends to forces on them. */
  readonly local: Float64Array;
  /** From movements of the nodes, in the table's frame, to movements of the ends in the member's frame. */
  readonly turned: Float64Array;
  /** `local` × `turned`: movements of the nodes to forces on the ends. */
  readonly forces: Float64Array;
}

const NO_ARM: Vec3 = [0, 0, 0];

/** @throws RangeError when the member has no length, a negative stiffness, or its z direction along it. */
export function buildMember(member: FrameMember, from: Vec3, to: Vec3): BuiltMember {
  const fromArm = member.arms?.from ?? NO_ARM;
  const toArm = member.arms?.to ?? NO_ARM;
  const along = sub(add(to, toArm), add(from, fromArm));
  const span = length(along);
  if (!(span > 0)) throw new RangeError(`member ${member.name} has no length`);
  const turned = turning(axes(member, along), fromArm, toArm);
  const local = localStiffness(member, span);
  return { local, turned, forces: product(local, turned) };
}

function axes({ name, z }: FrameMember, along: Vec3): readonly [Vec3, Vec3, Vec3] {
  const x = unit(along);
  const across = cross(z, x);
  if (!(length(across) > 1e-9 * length(z))) throw new RangeError(`member ${name}: z lies along the member`);
  const y = unit(across);
  return [x, y, cross(x, y)];
}

/** Movements of the nodes, carried over rigid arms (an arm r moves by turn × r), seen along the axes of the member. */
function turning(rows: readonly [Vec3, Vec3, Vec3], fromArm: Vec3, toArm: Vec3): Float64Array {
  const t = new Float64Array(WAYS * WAYS);
  [fromArm, toArm].forEach((arm, end) => {
    rows.forEach((row, i) => {
      const carried = cross(arm, row);
      for (let k = 0; k < 3; k++) {
        t[(6 * end + i) * WAYS + 6 * end + k] = row[k]!;
        t[(6 * end + i) * WAYS + 6 * end + 3 + k] = carried[k]!;
        t[(6 * end + 3 + i) * WAYS + 6 * end + 3 + k] = row[k]!;
      }
    });
  });
  return t;
}

function localStiffness(member: FrameMember, span: number): Float64Array {
  const { section, material } = member;
  const e = notNegative(member, 'e', material.e);
  const near = springs(member, member.springs?.from);
  const far = springs(member, member.springs?.to);
  const k = new Float64Array(WAYS * WAYS);
  rod(k, 0, (e * notNegative(member, 'area', section.area)) / span);
  const twist = (notNegative(member, 'g', material.g) * notNegative(member, 'j', section.j)) / span;
  rod(k, 3, twistThrough(twist, near.twist, far.twist));
  const bend = (i: number, a: number, b: number) => turnStiffness((e * notNegative(member, 'i', i)) / span, a, b);
  bending(k, 1, 5, bend(section.iz, near.z, far.z), span);
  bending(k, 2, 4, bend(section.iy, near.y, far.y), -span);
  return k;
}

const springs = (member: FrameMember, s: EndSprings = {}): Required<EndSprings> => ({
  twist: notNegative(member, 'spring', s.twist ?? Infinity),
  y: notNegative(member, 'spring', s.y ?? Infinity),
  z: notNegative(member, 'spring', s.z ?? Infinity),
});

function notNegative({ name }: FrameMember, what: string, value: number): number {
  if (!(value >= 0)) throw new RangeError(`member ${name}: ${what} is ${value}; it must not be negative`);
  return value;
}

/** Stretching or twisting: the two ends pull at each other. */
function rod(k: Float64Array, way: number, stiffness: number): void {
  put(k, way, way, stiffness);
  put(k, way + 6, way + 6, stiffness);
  put(k, way, way + 6, -stiffness);
}

/** Bending; the sign of `span` says whether a turn lifts the far end along y (about z) or lowers it along z (about y). */
function bending(k: Float64Array, shift: number, turn: number, s: TurnStiffness, span: number): void {
  const a = (s.near + s.cross) / span;
  const b = (s.far + s.cross) / span;
  const c = (a + b) / span;
  put(k, shift, shift, c);
  put(k, shift + 6, shift + 6, c);
  put(k, shift, shift + 6, -c);
  put(k, shift, turn, a);
  put(k, shift, turn + 6, b);
  put(k, turn, shift + 6, -a);
  put(k, shift + 6, turn + 6, -b);
  put(k, turn, turn, s.near);
  put(k, turn + 6, turn + 6, s.far);
  put(k, turn, turn + 6, s.cross);
}

function put(k: Float64Array, i: number, j: number, value: number): void {
  k[i * WAYS + j] = value;
  k[j * WAYS + i] = value;
}

function product(a: Float64Array, b: Float64Array): Float64Array {
  const c = new Float64Array(WAYS * WAYS);
  for (let i = 0; i < WAYS; i++) {
    for (let p = 0; p < WAYS; p++) {
      const f = a[i * WAYS + p]!;
      if (f === 0) continue;
      for (let j = 0; j < WAYS; j++) c[i * WAYS + j]! += f * b[p * WAYS + j]!;
    }
  }
  return c;
}
