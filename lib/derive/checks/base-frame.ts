import { toInner, turnIn, turnOut } from '../../geometry/frame.ts';
import { dot, scale, sub, type Vec3 } from '../../geometry/vec.ts';
import type { Assembly } from '../../model/assembly.ts';
import type { Mortise } from '../../model/feature.ts';
import type { Joint } from '../../model/joint.ts';
import type { PartId } from '../../model/part.ts';
import { floorLinks, topLinks } from './base-links.ts';
import { axisPoint, type BaseBar, barZ, baseBar, baseParts } from './base-members.ts';
import { type BaseNodes, baseNodes, hang, nodeOn, type Stop } from './base-nodes.ts';
import type { EndSprings, FrameMember, FrameNode, SpaceFrame } from './solvers/frame-model.ts';
import { rectangleSection } from './solvers/frame-section.ts';
import { jointStiffness } from './solvers/joint-stiffness.ts';
import type { TableModel } from './table-model.ts';

/** A glued joint as the frame has it: the end of a butting member at a node of its mate. */
export interface FrameSpot {
  readonly joint: Joint;
  /** The butting piece and the one it is let into. */
  readonly butting: BaseBar;
  readonly mate: BaseBar;
  /** Name of the member whose end it is, and which end. */
  readonly member: string;
  readonly end: 'from' | 'to';
}

/** The base of a table as bars and springs, and where the top pushes it. */
export interface BaseFrame {
  readonly frame: SpaceFrame;
  readonly spots: readonly FrameSpot[];
  /** Nodes at the height of the show face, one over each bearing that is screwed to the top. */
  readonly pushed: readonly string[];
  /** The piece that a member is of; links to floor and top are of none. */
  readonly pieces: ReadonlyMap<string, PartId>;
  /** The piece at a node. */
  readonly owners: ReadonlyMap<string, PartId>;
}

export type BaseFrameOutcome =
  | { readonly base: BaseFrame; readonly missing?: never }
  | { readonly missing: string; readonly base?: never };

/**
 * The base as a space frame: each piece a bar along its grain, cut into members at its joints. A piece that butts with
 * its end reaches to the axis of its mate and turns there against the spring of its joint; a top pushes over a hinge, so
 * that a frame without a stretcher is the mechanism it is.
 *
 * @param grip share of E_T b d² that a glued joint keeps as stiffness.
 */
export function baseFrame(assembly: Assembly, model: TableModel, grip: number): BaseFrameOutcome {
  const bars = new Map<PartId, BaseBar>();
  for (const part of baseParts(assembly)) {
    const { bar, missing } = baseBar(assembly, part);
    if (!bar) return { missing };
    bars.set(part.id, bar);
  }
  const base = baseNodes(bars);
  for (const joint of assembly.joints) addJoint(base, joint);
  addScrewed(assembly, base);
  const floor = floorLinks(assembly, base);
  const top = topLinks(model, base);
  const pieces = [...bars.values()].map((bar) => membersOf(bar, base, grip));
  const members = pieces.flatMap((p) => p.members);
  return {
    base: {
      frame: { nodes: [...base.nodes.values()], members: [...members, ...floor, ...top.members] },
      spots: pieces.flatMap((p) => p.spots),
      pushed: top.pushed,
      pieces: new Map(pieces.flatMap(({ bar, members: own }) => own.map((m) => [m.name, bar.part.id] as const))),
      owners: base.owners,
    },
  };
}

/** Where a joint meets a piece: at an end of it, or along it. */
function meets(bar: BaseBar, joint: Joint): { readonly x: number; readonly end: boolean } {
  const side = joint.sides.find((s) => s.part === bar.part.id)!;
  const cuts = side.features.map(
    (id) => bar.part.features.find((f): f is Mortise => f.kind === 'mortise' && f.id === id)!,
  );
  const x = cuts.reduce((sum, m) => sum + m.at[0], 0) / cuts.length;
  return { x, end: Math.abs(cuts[0]!.into[0]) > 0.5 };
}

/** Joints this close along a piece are at one end of it, mm. */
const ONE_END = 1;

function addJoint(base: BaseNodes, joint: Joint): void {
  const [a, b] = joint.sides.map((s) => base.bars.get(s.part));
  if (!a || !b || joint.tenons.length === 0) return;
  const [atA, atB] = [meets(a, joint), meets(b, joint)];
  const [butting, mate, from, to] = atA.end ? [a, b, atA, atB] : [b, a, atB, atA];
  // A second joint of the same two ends is left to the first one: their whole faces meet there already.
  const known = base.stops.get(butting.part.id)!.some((s) => s.spot?.mate === mate && Math.abs(s.x - from.x) < ONE_END);
  if (!known) hang(base, butting, from.x, nodeOn(base, mate, to.x), { joint, mate });
}

/** Pieces that are screwed to each other, as a cleat to its leg, turn together. */
function addScrewed(assembly: Assembly, base: BaseNodes): void {
  const done = new Set<string>();
  for (const { base: under, into } of assembly.fixings) {
    const [a, b] = [base.bars.get(under), base.bars.get(into)];
    if (!a || !b || done.has(`${under} ${into}`)) continue;
    done.add(`${under} ${into}`);
    const middle = axisPoint(a, a.length / 2);
    hang(base, a, a.length / 2, nodeOn(base, b, toInner(b.frame, middle)[0]));
  }
}

interface Pieces {
  readonly bar: BaseBar;
  readonly members: readonly FrameMember[];
  readonly spots: readonly FrameSpot[];
}

/** The members of one bar, from stop to stop; an end that butts turns against the spring of its joint. */
function membersOf(bar: BaseBar, { nodes, stops }: BaseNodes, grip: number): Pieces {
  const sorted = [...stops.get(bar.part.id)!].sort((p, q) => p.x - q.x);
  const spots: FrameSpot[] = [];
  const members = sorted.slice(1).map((to, k): FrameMember => {
    const from = sorted[k]!;
    const name = `${bar.part.id} ${k + 1}`;
    const ends = { from, to };
    for (const end of ['from', 'to'] as const) {
      const { spot } = ends[end];
      if (spot) spots.push({ ...spot, butting: bar, member: name, end });
    }
    return {
      name,
      from: from.node,
      to: to.node,
      section: rectangleSection(bar.alongY, bar.alongZ),
      material: bar.material,
      z: barZ(bar),
      springs: { from: springs(bar, from, grip), to: springs(bar, to, grip) },
      arms: { from: arm(bar, from, nodes), to: arm(bar, to, nodes) },
    };
  });
  return { bar, members, spots };
}

/** From the node to the axis of the bar, square to it: a butting piece reaches to the axis of its mate. */
function arm(bar: BaseBar, stop: Stop, nodes: ReadonlyMap<string, FrameNode>): Vec3 {
  const off = sub(axisPoint(bar, stop.x), nodes.get(stop.node)!.at);
  return sub(off, scale(bar.frame.x, dot(off, bar.frame.x)));
}

/** Springs of a joint about y and z of the butting piece; only the wood that its mate has opposite it counts. */
function springs(bar: BaseBar, { spot }: Stop, grip: number): EndSprings {
  if (!spot) return {};
  const { mate } = spot;
  const alongY = Math.min(bar.alongY, sizeAlong(mate, turnOut(bar.frame, [0, 1, 0])));
  const alongZ = Math.min(bar.alongZ, sizeAlong(mate, turnOut(bar.frame, [0, 0, 1])));
  const stiffness = (thickness: number, depth: number): number =>
    jointStiffness({ grip, across: mate.across, thickness, depth });
  return { y: stiffness(alongY, alongZ), z: stiffness(alongZ, alongY) };
}

/** How far a bar reaches along a direction of the table: its length, or a side of its section, whichever lies nearer. */
function sizeAlong(bar: BaseBar, direction: Vec3): number {
  const [x, y, z] = turnIn(bar.frame, direction).map(Math.abs) as [number, number, number];
  if (x >= y && x >= z) return bar.length;
  return y >= z ? bar.alongY : bar.alongZ;
}
