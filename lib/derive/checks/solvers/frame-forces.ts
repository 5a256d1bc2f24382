import type { Vec3 } from '../../../geometry/vec.ts';
import { type AssembledFrame, nodeOf } from './frame-assemble.ts';
import { WAYS } from './frame-member.ts';
import { DOFS, type EndForces, type Ends, type LoadCase, type Reaction, type SpaceFrame } from './frame-model.ts';

/** The loads of a case at every node: six values a node in the order of `DOFS`, N and N mm. */
export function nodeLoads({ nodes }: SpaceFrame, { nodeIndex }: AssembledFrame, load: LoadCase): Float64Array {
  const all = new Float64Array(6 * nodes.length);
  for (const { node, force, moment } of load.loads) {
    const n = nodeOf(nodeIndex, node, `load case ${load.name}`);
    force?.forEach((value, k) => {
      all[6 * n + k]! += value;
    });
    moment?.forEach((value, k) => {
      all[6 * n + 3 + k]! += value;
    });
  }
  return all;
}

/** Forces on the ends of all members, in their own frames: twelve a member. */
export function endForces({ built, places }: AssembledFrame, x: Float64Array): Float64Array[] {
  return built.map(({ forces }, m) => {
    const place = places[m]!;
    const f = new Float64Array(WAYS);
    for (let j = 0; j < WAYS; j++) {
      const u = place[j]!;
      if (u < 0) continue;
      for (let i = 0; i < WAYS; i++) f[i]! += forces[i * WAYS + j]! * x[u]!;
    }
    return f;
  });
}

export function namedEnds(frame: SpaceFrame, forces: readonly Float64Array[]): Map<string, Ends<EndForces>> {
  return new Map(frame.members.map(({ name }, m) => [name, { from: end(forces[m]!, 0), to: end(forces[m]!, 6) }]));
}

const end = (f: Float64Array, at: number): EndForces => ({
  axial: f[at]!,
  shearY: f[at + 1]!,
  shearZ: f[at + 2]!,
  twist: f[at + 3]!,
  momentY: f[at + 4]!,
  momentZ: f[at + 5]!,
});

/** What holds the held nodes: the forces of their members less the loads put right on them. */
export function reactions(
  frame: SpaceFrame,
  { nodeIndex, built }: AssembledFrame,
  forces: readonly Float64Array[],
  loads: Float64Array,
): Map<string, Reaction> {
  const sum = Float64Array.from(loads, (value) => -value);
  frame.members.forEach((member, m) => {
    const [a, b] = [6 * nodeIndex.get(member.from)!, 6 * nodeIndex.get(member.to)!];
    for (let j = 0; j < WAYS; j++) sum[j < 6 ? a + j : b + j - 6]! += carried(built[m]!.turned, forces[m]!, j);
  });
  const held = frame.nodes.filter((node) => (node.held ?? []).length > 0);
  return new Map(held.map((node) => [node.name, reaction(node.held!, sum, 6 * nodeIndex.get(node.name)!)]));
}

function reaction(held: readonly string[], sum: Float64Array, at: number): Reaction {
  const part = (d: number): number => (held.includes(DOFS[d]!) ? sum[at + d]! : 0);
  const three = (d: number): Vec3 => [part(d), part(d + 1), part(d + 2)];
  return { force: three(0), moment: three(3) };
}

/** The share of the end forces that arrives at way j of the nodes. */
function carried(turned: Float64Array, force: Float64Array, j: number): number {
  let sum = 0;
  for (let i = 0; i < WAYS; i++) sum += turned[i * WAYS + j]! * force[i]!;
  return sum;
}
