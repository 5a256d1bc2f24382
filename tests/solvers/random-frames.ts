import * as fc from 'fast-check';
import type { EndSprings, FrameMember, LoadCase, SpaceFrame } from '../../lib/derive/checks/solvers/frame-model.ts';
import { DOFS } from '../../lib/derive/checks/solvers/frame-model.ts';
import { rectangleSection } from '../../lib/derive/checks/solvers/frame-section.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import { CHERRY } from './sample-bases.ts';

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const vec = (size: number): fc.Arbitrary<Vec3> => fc.tuple(mm(-size, size), mm(-size, size), mm(-size, size));

const spring = fc.oneof(fc.constant(Infinity), mm(1e6, 1e9));
const springs: fc.Arbitrary<EndSprings> = fc.record({ twist: spring, y: spring, z: spring });
const hinges: fc.Arbitrary<EndSprings> = fc.record({ twist: spring, y: fc.constant(0), z: fc.constant(0) });
const arm: fc.Arbitrary<Vec3> = fc.oneof(fc.constant<Vec3>([0, 0, 0]), vec(60));

/** What a member is, its ends apart. */
const piece = fc.record({
  sizes: fc.tuple(mm(20, 120), mm(20, 120)),
  z: vec(1),
  from: springs,
  to: springs,
  fromArm: arm,
  toArm: arm,
});

/** The same, perhaps hinged at one end. */
const brace = fc.tuple(piece, fc.oneof(springs, hinges)).map(([p, from]) => ({ ...p, from }));

type Piece = typeof piece extends fc.Arbitrary<infer T> ? T : never;

/** Frames in space on one held node: a chain of nodes and some members across, of all sizes and directions. */
export const randomFrames: fc.Arbitrary<SpaceFrame> = fc
  .record({
    at: fc.array(vec(90), { minLength: 3, maxLength: 8 }),
    pieces: fc.array(piece, { minLength: 7, maxLength: 7 }),
    across: fc.array(fc.tuple(fc.nat(7), fc.nat(7), brace), { maxLength: 4 }),
  })
  .map(({ at, pieces, across }) => {
    const count = at.length;
    // 400 mm and more from each other whatever chance says.
    const nodes = at.map((p, k) => ({
      name: `n${k}`,
      at: [p[0] + 400 * k, p[1] + 300 * (k % 2), p[2] + 500 * (k % 3)] as const,
      ...(k === 0 ? { held: DOFS } : {}),
    }));
    const chain = nodes.slice(1).map((_, k) => member(`m${k}`, k, k + 1, pieces[k]!));
    const more = across
      .map(([a, b, p], k) => member(`x${k}`, a % count, b % count, p))
      .filter(({ from, to }) => from !== to);
    return { nodes, members: [...chain, ...more] };
  });

function member(name: string, from: number, to: number, p: Piece): FrameMember {
  return {
    name,
    from: `n${from}`,
    to: `n${to}`,
    section: rectangleSection(...p.sizes),
    material: CHERRY,
    z: [p.z[0], p.z[1] + 2, p.z[2] + 3],
    springs: { from: p.from, to: p.to },
    arms: { from: p.fromArm, to: p.toArm },
  };
}

/** A force and a moment on two nodes of a frame. */
export const randomLoads = fc.tuple(vec(500), vec(1e5), fc.nat(7), fc.nat(7));

export function loadOn(frame: SpaceFrame, [force, moment, a, b]: readonly [Vec3, Vec3, number, number]): LoadCase {
  const name = (k: number): string => frame.nodes[k % frame.nodes.length]!.name;
  return {
    name: 'some',
    loads: [
      { node: name(a), force },
      { node: name(b), moment },
    ],
  };
}
