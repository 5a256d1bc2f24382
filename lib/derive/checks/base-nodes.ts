import { sub, type Vec3 } from '../../geometry/vec.ts';
import type { Joint } from '../../model/joint.ts';
import type { PartId } from '../../model/part.ts';
import { axisPoint, type BaseBar } from './base-members.ts';
import type { FrameNode } from './solvers/frame-model.ts';

/** A place of a bar that a node holds. */
export interface Stop {
  /** mm from the reference end. */
  readonly x: number;
  readonly node: string;
  /** A joint by which the end of the bar butts against another one: its node lies on the axis of the mate. */
  readonly spot?: { readonly joint: Joint; readonly mate: BaseBar };
}

/** A base while it is put together: its bars, the nodes, and where each bar meets which node. */
export interface BaseNodes {
  readonly bars: ReadonlyMap<PartId, BaseBar>;
  readonly nodes: Map<string, FrameNode>;
  readonly stops: ReadonlyMap<PartId, Stop[]>;
  /** The piece at each node. */
  readonly owners: Map<string, PartId>;
}

/** Two stops of a bar nearer than this are one, mm. */
const SAME = 1e-6;

export const baseNodes = (bars: ReadonlyMap<PartId, BaseBar>): BaseNodes => ({
  bars,
  nodes: new Map(),
  stops: new Map([...bars.keys()].map((id) => [id, []])),
  owners: new Map(),
});

export function addNode({ nodes, owners }: BaseNodes, node: FrameNode, owner: PartId): void {
  nodes.set(node.name, node);
  owners.set(node.name, owner);
}

/** The node on the axis of a bar at a place along it, within its length; made when there is none. */
export function nodeOn(base: BaseNodes, bar: BaseBar, x: number): string {
  const at = Math.min(bar.length, Math.max(0, x));
  const list = base.stops.get(bar.part.id)!;
  const known = list.find((s) => Math.abs(s.x - at) < SAME && !s.spot);
  if (known) return known.node;
  const name = `${bar.part.id} at ${list.length}`;
  addNode(base, { name, at: axisPoint(bar, at) }, bar.part.id);
  list.push({ x: at, node: name });
  return name;
}

/** Whether two points are one. */
export const isSamePoint = (a: Vec3, b: Vec3): boolean => sub(a, b).every((d) => Math.abs(d) < SAME);
