import { type BuiltMember, buildMember, WAYS } from './frame-member.ts';
import { DOFS, type FrameNode, type SpaceFrame } from './frame-model.ts';
import { type Skyline, skyline } from './frame-skyline.ts';

/** A frame with its unknowns counted and its stiffness put together. */
export interface AssembledFrame {
  readonly nodeIndex: ReadonlyMap<string, number>;
  /** For each node, six in the order of `DOFS`: the number of the unknown, or -1 where it is held. */
  readonly unknown: Int32Array;
  readonly built: readonly BuiltMember[];
  /** For each member, the twelve unknowns of its ends. */
  readonly places: readonly Int32Array[];
  readonly stiffness: Skyline;
}

/** @throws RangeError when a name is missing or used twice, or a member cannot be built. */
export function assembleFrame(frame: SpaceFrame): AssembledFrame {
  const nodeIndex = indexByName('node', frame.nodes);
  indexByName('member', frame.members);
  const unknown = countUnknowns(frame.nodes);
  const ends = frame.members.map((m) => [nodeOf(nodeIndex, m.from, m.name), nodeOf(nodeIndex, m.to, m.name)] as const);
  const built = frame.members.map((m, k) => buildMember(m, frame.nodes[ends[k]![0]]!.at, frame.nodes[ends[k]![1]]!.at));
  const places = ends.map(([a, b]) => {
    const place = new Int32Array(WAYS);
    place.set(unknown.subarray(6 * a, 6 * a + 6));
    place.set(unknown.subarray(6 * b, 6 * b + 6), 6);
    return place;
  });
  const stiffness = skyline(firstRows(unknown, places));
  built.forEach((b, k) => {
    addMember(stiffness, b, places[k]!);
  });
  return { nodeIndex, unknown, built, places, stiffness };
}

/** The number of a node. @throws RangeError naming who asked for it. */
export function nodeOf(index: ReadonlyMap<string, number>, name: string, asker: string): number {
  const found = index.get(name);
  if (found === undefined) throw new RangeError(`${asker}: there is no node ${name}`);
  return found;
}

function indexByName(what: string, things: readonly { readonly name: string }[]): Map<string, number> {
  const index = new Map(things.map((t, k) => [t.name, k]));
  const twice = things.find((t, k) => index.get(t.name) !== k);
  if (twice) throw new RangeError(`two of the ${what}s are called ${twice.name}`);
  return index;
}

function countUnknowns(nodes: readonly FrameNode[]): Int32Array {
  let count = 0;
  const unknown = new Int32Array(6 * nodes.length);
  nodes.forEach(({ held }, n) => {
    DOFS.forEach((dof, d) => {
      unknown[6 * n + d] = held?.includes(dof) ? -1 : count++;
    });
  });
  return unknown;
}

/** Where each column begins: at the least unknown that shares a member (or the node) with it. */
function firstRows(unknown: Int32Array, places: readonly Int32Array[]): Int32Array {
  const free = unknown.filter((u) => u >= 0);
  const first = Int32Array.from(free, (_, j) => j);
  for (const place of places) {
    const mine = place.filter((u) => u >= 0);
    const least = mine.reduce((a, b) => Math.min(a, b), free.length);
    for (const u of mine) first[u] = Math.min(first[u]!, least);
  }
  return first;
}

function addMember({ first, start, values }: Skyline, { turned, forces }: BuiltMember, place: Int32Array): void {
  for (let j = 0; j < WAYS; j++) {
    const column = place[j]!;
    if (column < 0) continue;
    const at = start[column]! - first[column]!;
    for (let i = 0; i < WAYS; i++) {
      const row = place[i]!;
      if (row >= 0 && row <= column) values[at + row]! += inner(turned, i, forces, j);
    }
  }
}

/** Column i of `a` times column j of `b`. */
export function inner(a: Float64Array, i: number, b: Float64Array, j: number): number {
  let sum = 0;
  for (let p = 0; p < WAYS; p++) sum += a[p * WAYS + i]! * b[p * WAYS + j]!;
  return sum;
}
