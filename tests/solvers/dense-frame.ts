import type { EndSprings, FrameMember, LoadCase, SpaceFrame } from '../../lib/derive/checks/solvers/frame-model.ts';
import { DOFS } from '../../lib/derive/checks/solvers/frame-model.ts';
import { add, cross, dot, length, sub, unit, type Vec3 } from '../../lib/geometry/vec.ts';

/**
 * A second opinion on frames that shares nothing with the solver: textbook beams without springs, every spring with an
 * unknown of its own for the end behind it, a full matrix, and Gauss with pivoting.
 *
 * @returns movements of each node in the order of `DOFS`, mm and radians.
 */
export function denseMoves(frame: SpaceFrame, load: LoadCase): Map<string, number[]> {
  const index = new Map(frame.nodes.map((n, k) => [n.name, k]));
  const rows: Row[] = [];
  let size = 6 * frame.nodes.length;
  const own = (): number => size++;
  for (const member of frame.members) rows.push(...memberRows(frame, index, member, own));
  const k = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (const { weight, left, right } of rows) {
    for (const [i, a] of left) for (const [j, b] of right) k[i]![j]! += weight * a * b;
  }
  const f = new Array<number>(size).fill(0);
  for (const { node, force, moment } of load.loads) {
    [...(force ?? [0, 0, 0]), ...(moment ?? [0, 0, 0])].forEach((value, d) => {
      f[6 * index.get(node)! + d]! += value;
    });
  }
  const held = new Set(frame.nodes.flatMap((n, at) => (n.held ?? []).map((dof) => 6 * at + DOFS.indexOf(dof))));
  const free = Array.from({ length: size }, (_, i) => i).filter((i) => !held.has(i));
  const x = gauss(
    free.map((i) => free.map((j) => k[i]![j]!)),
    free.map((i) => f[i]!),
  );
  const all = new Array<number>(size).fill(0);
  free.forEach((i, n) => {
    all[i] = x[n]!;
  });
  return new Map(frame.nodes.map((n, at) => [n.name, all.slice(6 * at, 6 * at + 6)]));
}

/** A linear function of the unknowns. */
type Linear = Map<number, number>;

/** weight × left × right, a term of the energy. */
interface Row {
  readonly weight: number;
  readonly left: Linear;
  readonly right: Linear;
}

function memberRows(
  frame: SpaceFrame,
  index: ReadonlyMap<string, number>,
  member: FrameMember,
  own: () => number,
): Row[] {
  const [a, b] = [index.get(member.from)!, index.get(member.to)!];
  const arms = [member.arms?.from ?? zero, member.arms?.to ?? zero] as const;
  const along = sub(add(frame.nodes[b]!.at, arms[1]), add(frame.nodes[a]!.at, arms[0]));
  const x = unit(along);
  const y = unit(cross(member.z, x));
  const axes: readonly Vec3[] = [x, y, cross(x, y)];
  const rows: Row[] = [];
  const ends = [a, b].flatMap((node, end) => {
    const springs = (end === 0 ? member.springs?.from : member.springs?.to) ?? {};
    const shift = axes.map((axis) => shiftOf(node, axis, arms[end]!));
    const turn = axes.map((axis, i) => turnOf(node, axis, springOf(springs, i), rows, own));
    return [...shift, ...turn];
  });
  const k = textbookBeam(member, length(along));
  for (let i = 0; i < 12; i++) {
    for (let j = 0; j < 12; j++) if (k[i]![j] !== 0) rows.push({ weight: k[i]![j]!, left: ends[i]!, right: ends[j]! });
  }
  return rows;
}

const zero: Vec3 = [0, 0, 0];

const springOf = (s: EndSprings, i: number): number => [s.twist, s.y, s.z][i] ?? Infinity;

/** Along an axis, at the tip of an arm. */
function shiftOf(node: number, axis: Vec3, arm: Vec3): Linear {
  const turns: readonly Vec3[] = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  return new Map([
    ...axis.map((c, k): [number, number] => [6 * node + k, c]),
    ...turns.map((t, k): [number, number] => [6 * node + 3 + k, dot(cross(t, arm), axis)]),
  ]);
}

/** About an axis: of the node when it is rigid, of its own with a spring between otherwise. */
function turnOf(node: number, axis: Vec3, spring: number, rows: Row[], own: () => number): Linear {
  const rigid: Linear = new Map(axis.map((c, k) => [6 * node + 3 + k, c]));
  if (spring === Infinity) return rigid;
  const mine = own();
  const apart: Linear = new Map([...[...rigid].map(([i, c]): [number, number] => [i, -c]), [mine, 1]]);
  rows.push({ weight: spring, left: apart, right: apart });
  return new Map([[mine, 1]]);
}

/** Przemieniecki, Theory of Matrix Structural Analysis, without shear; from memory. */
function textbookBeam({ section, material }: FrameMember, l: number): number[][] {
  const { e, g } = material;
  const [ea, gj] = [(e * section.area) / l, (g * section.j) / l];
  const [z, y] = [(e * section.iz) / l ** 3, (e * section.iy) / l ** 3];
  const half = [
    [ea, 0, 0, 0, 0, 0, -ea, 0, 0, 0, 0, 0],
    [0, 12 * z, 0, 0, 0, 6 * z * l, 0, -12 * z, 0, 0, 0, 6 * z * l],
    [0, 0, 12 * y, 0, -6 * y * l, 0, 0, 0, -12 * y, 0, -6 * y * l, 0],
    [0, 0, 0, gj, 0, 0, 0, 0, 0, -gj, 0, 0],
    [0, 0, -6 * y * l, 0, 4 * y * l * l, 0, 0, 0, 6 * y * l, 0, 2 * y * l * l, 0],
    [0, 6 * z * l, 0, 0, 0, 4 * z * l * l, 0, -6 * z * l, 0, 0, 0, 2 * z * l * l],
  ];
  const other = [
    [-ea, 0, 0, 0, 0, 0, ea, 0, 0, 0, 0, 0],
    [0, -12 * z, 0, 0, 0, -6 * z * l, 0, 12 * z, 0, 0, 0, -6 * z * l],
    [0, 0, -12 * y, 0, 6 * y * l, 0, 0, 0, 12 * y, 0, 6 * y * l, 0],
    [0, 0, 0, -gj, 0, 0, 0, 0, 0, gj, 0, 0],
    [0, 0, -6 * y * l, 0, 2 * y * l * l, 0, 0, 0, 6 * y * l, 0, 4 * y * l * l, 0],
    [0, 6 * z * l, 0, 0, 0, 2 * z * l * l, 0, -6 * z * l, 0, 0, 0, 4 * z * l * l],
  ];
  return [...half, ...other];
}

/** Gauss with pivoting; changes its arguments. */
function gauss(a: number[][], b: number[]): number[] {
  for (let c = 0; c < b.length; c++) {
    pivot(a, b, c);
    for (let r = c + 1; r < b.length; r++) subtract(a, b, r, c);
  }
  for (let r = b.length - 1; r >= 0; r--) {
    for (let j = r + 1; j < b.length; j++) b[r]! -= a[r]![j]! * b[j]!;
    b[r]! /= a[r]![r]!;
  }
  return b;
}

function pivot(a: number[][], b: number[], c: number): void {
  let p = c;
  for (let r = c + 1; r < b.length; r++) if (Math.abs(a[r]![c]!) > Math.abs(a[p]![c]!)) p = r;
  [a[c], a[p]] = [a[p]!, a[c]!];
  [b[c], b[p]] = [b[p]!, b[c]!];
}

function subtract(a: number[][], b: number[], r: number, c: number): void {
  const f = a[r]![c]! / a[c]![c]!;
  if (f === 0) return;
  for (let j = c; j < b.length; j++) a[r]![j]! -= f * a[c]![j]!;
  b[r]! -= f * b[c]!;
}
