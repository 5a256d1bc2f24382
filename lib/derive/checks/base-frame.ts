import { toInner } from '../../geometry/frame.ts';
import { scale, sub, type Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import type { Mortise } from '../../model/feature.ts';
import type { Joint } from '../../model/joint.ts';
import type { PartId } from '../../model/part.ts';
import { axisPoint, type BaseBar, barZ, baseBar, baseParts } from './base-members.ts';
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
}

export type BaseFrameOutcome =
  | { readonly base: BaseFrame; readonly missing?: never }
  | { readonly missing: string; readonly base?: never };

/** A joint of a stop on a bar: how far from the reference end, and the name of the node there. */
interface Stop {
  readonly x: number;
  readonly node: string;
  readonly spot?: { readonly joint: Joint; readonly mate: BaseBar };
}

/** Two stops of a bar nearer than this are one node, mm. */
const SAME = 1e-6;

/** Pads this close along the table stand under one frame, mm. */
const SAME_FRAME = 100;

/** A link so stiff that only the wood bends: a bar of 200 mm square, mm² and mm⁴ (our convention). */
const STIFF = rectangleSection(200, 200);

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
    if (bar.across === undefined) return { missing: `the stiffness of ${part.wood} across the grain` };
    bars.set(part.id, bar);
  }
  const nodes = new Map<string, FrameNode>();
  const stops = new Map<PartId, Stop[]>([...bars.keys()].map((id) => [id, []]));
  for (const joint of assembly.joints) addJoint(bars, nodes, stops, joint);
  addScrewed(assembly, bars, nodes, stops);
  const links = [...addFloor(assembly, bars, nodes, stops), ...addTop(model, bars, nodes, stops)];
  const spots: FrameSpot[] = [];
  const members = [...bars.values()].flatMap((bar) => membersOf(bar, stops.get(bar.part.id)!, nodes, grip, spots));
  const pushed = [...nodes.keys()].filter((name) => name.startsWith('push '));
  return { base: { frame: { nodes: [...nodes.values()], members: [...members, ...links] }, spots, pushed } };
}

/** Where a joint meets a piece: at an end of it, or along it. */
function meets(bar: BaseBar, joint: Joint): { x: number; end: boolean } {
  const side = joint.sides.find((s) => s.part === bar.part.id)!;
  const cuts = side.features.map(
    (id) => bar.part.features.find((f): f is Mortise => f.kind === 'mortise' && f.id === id)!,
  );
  const x = cuts.reduce((sum, m) => sum + m.at[0], 0) / cuts.length;
  return { x: Math.min(bar.length, Math.max(0, x)), end: Math.abs(cuts[0]!.into[0]) > 0.5 };
}

function addJoint(
  bars: ReadonlyMap<PartId, BaseBar>,
  nodes: Map<string, FrameNode>,
  stops: Map<PartId, Stop[]>,
  joint: Joint,
): void {
  const [a, b] = joint.sides.map((s) => bars.get(s.part));
  if (!a || !b || joint.tenons.length === 0) return;
  const [atA, atB] = [meets(a, joint), meets(b, joint)];
  const [butting, mate, from, to] = atA.end ? [a, b, atA, atB] : [b, a, atB, atA];
  const node = nodeOn(mate, to.x, nodes, stops);
  stops.get(butting.part.id)!.push({ x: from.x, node, spot: { joint, mate } });
}

/** The node of a bar at a place along it, made when there is none. */
function nodeOn(bar: BaseBar, x: number, nodes: Map<string, FrameNode>, stops: Map<PartId, Stop[]>): string {
  const list = stops.get(bar.part.id)!;
  const known = list.find((s) => Math.abs(s.x - x) < SAME && !s.spot);
  if (known) return known.node;
  const node = `${bar.part.id} at ${list.length}`;
  nodes.set(node, { name: node, at: axisPoint(bar, x) });
  list.push({ x, node });
  return node;
}

/** Pieces that are screwed to each other, as a cleat to its leg, turn together. */
function addScrewed(
  assembly: Assembly,
  bars: ReadonlyMap<PartId, BaseBar>,
  nodes: Map<string, FrameNode>,
  stops: Map<PartId, Stop[]>,
): void {
  const done = new Set<string>();
  for (const { base, into } of assembly.fixings) {
    const [a, b] = [bars.get(base), bars.get(into)];
    if (!a || !b || done.has(`${base} ${into}`)) continue;
    done.add(`${base} ${into}`);
    const middle = axisPoint(a, a.length / 2);
    const x = Math.min(b.length, Math.max(0, toInner(b.frame, middle)[0]));
    stops.get(base)!.push({ x: a.length / 2, node: nodeOn(b, x, nodes, stops) });
  }
}

/** Nodes on the floor under the pads: friction holds each frame along the table, and across it by one of its pads. */
function addFloor(
  assembly: Assembly,
  bars: ReadonlyMap<PartId, BaseBar>,
  nodes: Map<string, FrameNode>,
  stops: Map<PartId, Stop[]>,
): FrameMember[] {
  const pads = assembly.joints.filter((j) => j.kind === 'pad');
  const feet = pads.flatMap((j) => {
    const over = j.sides.map((s) => bars.get(s.part)).find((b) => b !== undefined);
    const pad = j.sides.map((s) => s.part).find((id) => partOf(assembly, id).kind === 'pad');
    if (!over || pad === undefined) return [];
    const { width, length } = partOf(assembly, pad).finished;
    const frame = placeOf(assembly, pad);
    const center: Vec3 = [
      frame.origin[0] + (frame.x[0] * length + frame.y[0] * width) / 2,
      frame.origin[1] + (frame.x[1] * length + frame.y[1] * width) / 2,
      0,
    ];
    return [{ pad, over, center }];
  });
  return feet.map(({ pad, over, center }, k) => {
    const name = `floor ${pad}`;
    const first = feet.findIndex((f) => Math.abs(f.center[0] - center[0]) < SAME_FRAME) === k;
    const held = first ? (['x', 'y', 'z'] as const) : (['x', 'z'] as const);
    nodes.set(name, { name, at: center, held });
    const x = Math.min(over.length, Math.max(0, toInner(over.frame, center)[0]));
    return link(`pad ${pad}`, nodeOn(over, x, nodes, stops), name, nodes);
  });
}

/** A node at the show face over each screwed bearing, on a hinge along the table, and the stiff top between them. */
function addTop(
  model: TableModel,
  bars: ReadonlyMap<PartId, BaseBar>,
  nodes: Map<string, FrameNode>,
  stops: Map<PartId, Stop[]>,
): FrameMember[] {
  const screwed = model.bearings.filter((b) => b.screwed && bars.has(b.part));
  const tops = screwed.map((b) => {
    const bar = bars.get(b.part)!;
    const name = `push ${b.part}`;
    nodes.set(name, { name, at: [b.x, 0, model.height] });
    const below = nodeOn(bar, bar.length / 2, nodes, stops);
    return {
      name,
      x: b.x,
      member: link(`under ${b.part}`, below, name, nodes, { twist: 0, y: 0, z: Number.POSITIVE_INFINITY }),
    };
  });
  const chain = tops.slice(1).map((t, k) => link(`top ${k}`, tops[k]!.name, t.name, nodes));
  return [...tops.map((t) => t.member), ...chain];
}

/** A stiff link between two nodes; its z axis lies across the table, so `y` turns about that. */
function link(
  name: string,
  from: string,
  to: string,
  nodes: ReadonlyMap<string, FrameNode>,
  atTo?: EndSprings,
): FrameMember {
  const d = sub(nodes.get(to)!.at, nodes.get(from)!.at);
  const upright = Math.abs(d[2]) > Math.hypot(d[0], d[1]);
  return {
    name,
    from,
    to,
    section: STIFF,
    material: { e: 10_000, g: 1000 },
    z: upright ? [1, 0, 0] : [0, 0, 1],
    ...(atTo ? { springs: { to: atTo } } : {}),
  };
}

/** The members of one bar, from stop to stop; an end that butts turns against the spring of its joint. */
function membersOf(
  bar: BaseBar,
  stops: readonly Stop[],
  nodes: ReadonlyMap<string, FrameNode>,
  grip: number,
  spots: FrameSpot[],
): FrameMember[] {
  const sorted = [...stops].sort((p, q) => p.x - q.x);
  return sorted.slice(1).map((to, k): FrameMember => {
    const from = sorted[k]!;
    const name = `${bar.part.id} ${k + 1}`;
    const note = (stop: Stop, end: 'from' | 'to'): void => {
      if (stop.spot) spots.push({ ...stop.spot, butting: bar, member: name, end });
    };
    note(from, 'from');
    note(to, 'to');
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
}

/** From the node to the axis of the bar, square to it: a butting piece reaches to the axis of its mate. */
function arm(bar: BaseBar, stop: Stop, nodes: ReadonlyMap<string, FrameNode>): Vec3 {
  const node = nodes.get(stop.node)!.at;
  const off = sub(axisPoint(bar, stop.x), node);
  const along = bar.frame.x;
  const reach = off[0] * along[0] + off[1] * along[1] + off[2] * along[2];
  return sub(off, scale(along, reach));
}

function springs(bar: BaseBar, stop: Stop, grip: number): EndSprings {
  if (!stop.spot) return {};
  const across = stop.spot.mate.across!;
  const mate = Math.max(stop.spot.mate.alongY, stop.spot.mate.alongZ);
  const stiffness = (thickness: number, depth: number): number =>
    jointStiffness({ grip, across, thickness: Math.min(thickness, mate), depth });
  return { y: stiffness(bar.alongY, bar.alongZ), z: stiffness(bar.alongZ, bar.alongY) };
}
