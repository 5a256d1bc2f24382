import { toInner, toOuter } from '../../geometry/frame.ts';
import { sub, type Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import { blankOf } from '../solids/solid-of.ts';
import type { BaseBar } from './base-members.ts';
import { addNode, type BaseNodes, hang, isSamePoint, nodeAt, nodeOn } from './base-nodes.ts';
import type { EndSprings, FrameMember } from './solvers/frame-model.ts';
import { rectangleSection } from './solvers/frame-section.ts';
import type { TableModel } from './table-model.ts';

/** Places that are this close along the table stand under one frame, mm (our convention). */
export const ONE_FRAME = 100;

/** A piece without pads that is longer than this stands on its two ends, a shorter one on its middle, mm (our convention). */
const TWO_ENDS = 150;

/** Corners this close to the lowest one stand on the floor, mm. */
const ON_FLOOR = 0.05;

/** A link so stiff that only the wood bends: a bar of 200 mm square, mm² and mm⁴ (our convention). */
const STIFF = rectangleSection(200, 200);

/** Where a piece stands on the floor. */
interface Stand {
  readonly name: string;
  readonly over: BaseBar;
  readonly at: Vec3;
}

/**
 * Nodes on the floor, under the pads or under the pieces themselves: friction holds each frame along the table, and across
 * it by one of its places.
 */
export function floorLinks(assembly: Assembly, base: BaseNodes): FrameMember[] {
  const pads = onPads(assembly, base);
  const stands = pads.length > 0 ? pads : onOwnCorners(base);
  return stands.flatMap(({ name, over, at }, k) => {
    const first = stands.findIndex((s) => Math.abs(s.at[0] - at[0]) < ONE_FRAME) === k;
    const held = first ? (['x', 'y', 'z'] as const) : (['x', 'z'] as const);
    const x = toInner(over.frame, at)[0];
    const above = nodeAt(base, over, x);
    if (above !== undefined && isSamePoint(base.nodes.get(above)!.at, at)) {
      addNode(base, { name: above, at, held }, over.part.id);
      return [];
    }
    const floor = `floor ${name}`;
    addNode(base, { name: floor, at, held }, over.part.id);
    if (above !== undefined) return [link(base, `pad ${name}`, above, floor)];
    hang(base, over, x, floor);
    return [];
  });
}

function onPads(assembly: Assembly, { bars }: BaseNodes): Stand[] {
  return assembly.joints.flatMap((joint): Stand[] => {
    const sides = joint.sides.map((s) => s.part);
    const over = sides.map((id) => bars.get(id)).find((b) => b !== undefined);
    const pad = sides.map((id) => partOf(assembly, id)).find((p) => p.kind === 'pad');
    if (joint.kind !== 'pad' || !over || !pad) return [];
    const { length, width } = pad.finished;
    const [x, y] = toOuter(placeOf(assembly, pad.id), [length / 2, width / 2, 0]);
    return [{ name: pad.id, over, at: [x, y, 0] }];
  });
}

function onOwnCorners({ bars }: BaseNodes): Stand[] {
  const all = [...bars.values()].map((over) => ({
    over,
    corners: blankOf(over.part).vertices.map((p) => toOuter(over.frame, p)),
  }));
  const floor = Math.min(...all.flatMap(({ corners }) => corners.map((p) => p[2])));
  return all.flatMap(({ over, corners }) => {
    const low = corners.filter((p) => p[2] < floor + ON_FLOOR);
    return low.length === 0 ? [] : ends(low).map((at, k) => ({ name: `${over.part.id} ${k + 1}`, over, at }));
  });
}

/** The middle of some points on the floor, or the two ends of their middle line when they reach far. */
function ends(points: readonly Vec3[]): Vec3[] {
  const [alongX, alongY] = [0, 1].map((k) => {
    const all = points.map((p) => p[k as 0 | 1]);
    return { from: Math.min(...all), to: Math.max(...all) };
  }) as [Reach, Reach];
  const [x, y] = [middle(alongX), middle(alongY)];
  if (Math.max(size(alongX), size(alongY)) <= TWO_ENDS) return [[x, y, 0]];
  return size(alongX) > size(alongY)
    ? [
        [alongX.from, y, 0],
        [alongX.to, y, 0],
      ]
    : [
        [x, alongY.from, 0],
        [x, alongY.to, 0],
      ];
}

interface Reach {
  readonly from: number;
  readonly to: number;
}

const middle = ({ from, to }: Reach): number => (from + to) / 2;
const size = ({ from, to }: Reach): number => to - from;

/** The stiff top: a node at the show face over the middle of each screwed bearing, on a hinge along the table. */
export interface TopLinks {
  readonly members: readonly FrameMember[];
  /** The nodes at the height of the show face. */
  readonly pushed: readonly string[];
}

const HINGE: EndSprings = { twist: 0, y: 0 };

export function topLinks(model: TableModel, base: BaseNodes): TopLinks {
  const tops: { readonly name: string; readonly at: Vec3 }[] = [];
  const under: FrameMember[] = [];
  for (const { part, x, from, to, screwed } of model.bearings) {
    const bar = base.bars.get(part);
    if (!screwed || !bar) continue;
    const at: Vec3 = [x, (from + to) / 2, model.height];
    const known = tops.find((t) => isSamePoint(t.at, at));
    const top = known ?? { name: `push ${part}`, at };
    if (!known) {
      tops.push(top);
      addNode(base, top, part);
    }
    under.push(link(base, `under ${part}`, nodeOn(base, bar, bar.length / 2), top.name, HINGE));
  }
  const between = tops.slice(1).map((top, k) => link(base, `top ${k}`, tops[k]!.name, top.name));
  return { members: [...under, ...between], pushed: tops.map((t) => t.name) };
}

/** A stiff link between two nodes. An upright one has its y axis across the table: a hinge about y swings along it. */
function link({ nodes }: BaseNodes, name: string, from: string, to: string, atTo?: EndSprings): FrameMember {
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
