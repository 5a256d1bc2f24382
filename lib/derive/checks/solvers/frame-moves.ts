import { degrees } from '../../../units/mm.ts';
import type { FrameNode, Move } from './frame-model.ts';

/** Movements of the nodes from those of the unknowns; what is held does not move. */
export function movesOf(
  nodes: readonly FrameNode[],
  unknown: Int32Array,
  x: Float64Array,
  scale = 1,
): Map<string, Move> {
  const at = (n: number, d: number): number => {
    const u = unknown[6 * n + d]!;
    return u < 0 ? 0 : x[u]! * scale;
  };
  return new Map(
    nodes.map(({ name }, n) => [
      name,
      { shift: [at(n, 0), at(n, 1), at(n, 2)], turn: [degrees(at(n, 3)), degrees(at(n, 4)), degrees(at(n, 5))] },
    ]),
  );
}
