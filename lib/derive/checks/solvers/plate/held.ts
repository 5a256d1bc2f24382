import { lineAt, SAME_LINE } from './grid.ts';
import { type Mesh, nodeAt } from './mesh.ts';
import { PLATE_WAYS, type Plate, type PlateSupport } from './plate.ts';

/**
 * The unknowns that supports hold: 3 × node + way, ascending.
 *
 * @throws RangeError when a support is askew to the grain, or it or its end has no grid line.
 */
export function heldWays(mesh: Mesh, supports: readonly PlateSupport[]): Int32Array {
  const held = new Set<number>();
  for (const support of supports) {
    for (const node of nodesUnder(mesh, support)) {
      for (const way of support.holds ?? ['down']) held.add(3 * node + PLATE_WAYS.indexOf(way));
    }
  }
  return Int32Array.from(held).sort();
}

function nodesUnder(mesh: Mesh, { from, to }: PlateSupport): number[] {
  const { xs, ys } = mesh.grid;
  if (Math.abs(from[0] - to[0]) > SAME_LINE && Math.abs(from[1] - to[1]) > SAME_LINE) {
    throw new RangeError(`a support from [${from.join(', ')}] to [${to.join(', ')}] lies askew to the grain`);
  }
  const [left, right] = [lineAt(xs, Math.min(from[0], to[0])), lineAt(xs, Math.max(from[0], to[0]))];
  const [low, high] = [lineAt(ys, Math.min(from[1], to[1])), lineAt(ys, Math.max(from[1], to[1]))];
  const nodes: number[] = [];
  for (let i = left; i <= right; i++) for (let j = low; j <= high; j++) nodes.push(nodeAt(mesh, i, j));
  return nodes;
}

/** Supports whose smallest hold on a rigid plate is below this part of the largest hold nothing. */
const NO_HOLD = 1e-12;

/**
 * Whether the supports of a plate keep it from dropping and from tilting either way. With `holds` absent: whether three of
 * its held points do not lie in one line.
 */
export function isHeld({ grid: { xs, ys }, supports }: Plate): boolean {
  const size = Math.max(xs.at(-1)! - xs[0]!, ys.at(-1)! - ys[0]!);
  const rows = supports.flatMap(({ from, to, holds = ['down'] }) =>
    holds.flatMap((way) => {
      if (way === 'slope along') return [[0, 1, 0]];
      if (way === 'slope across') return [[0, 0, 1]];
      return [from, to].map(([x, y]) => [1, (x - xs[0]!) / size, (y - ys[0]!) / size]);
    }),
  );
  const gram = (i: number, j: number): number => rows.reduce((sum, row) => sum + row[i]! * row[j]!, 0);
  const [a, b, c, d, e, f] = [gram(0, 0), gram(0, 1), gram(0, 2), gram(1, 1), gram(1, 2), gram(2, 2)];
  const volume = a * (d * f - e * e) - b * (b * f - c * e) + c * (b * e - c * d);
  return volume > NO_HOLD * rows.length ** 3;
}
