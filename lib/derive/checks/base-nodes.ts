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

/** A place along a bar, within its length, mm from the reference end. */
const onBar = (bar: BaseBar, x: number): number => Math.min(bar.length, Math.max(0, x));

/** The node that a bar has at a place along it, within its length. */
export function nodeAt({ stops }: BaseNodes, bar: BaseBar, x: number): string | undefined {
  return stops.get(bar.part.id)!.find((s) => Math.abs(s.x - onBar(bar, x)) < SAME && !s.spot)?.node;
}

/** The node on the axis of a bar at a place along it, within its length; made when there is none. */
export function nodeOn(base: BaseNodes, bar: BaseBar, x: number): string {
  const known = nodeAt(base, bar, x);
  if (known !== undefined) return known;
  const name = `${bar.part.id} at ${base.stops.get(bar.part.id)!.length}`;
  addNode(base, { name, at: axisPoint(bar, onBar(bar, x)) }, bar.part.id);
  hang(base, bar, x, name);
  return name;
}

/** Hangs a bar on a node at a place along it, within its length. */
export function hang({ stops }: BaseNodes, bar: BaseBar, x: number, node: string, spot?: Stop['spot']): void {
  stops.get(bar.part.id)!.push({ x: onBar(bar, x), node, ...(spot ? { spot } : {}) });
}

/** Whether two points are one. */
export const isSamePoint = (a: Vec3, b: Vec3): boolean => sub(a, b).every((d) => Math.abs(d) < SAME);
