import { radians } from '../../../units/mm.ts';
import { DOFS, type FrameNode } from './frame-model.ts';
import { movesOf } from './frame-moves.ts';
import type { Loose } from './frame-result.ts';

/** A movement of the unknowns that nothing resists. */
export interface LooseMode {
  readonly mode: Float64Array;
  /** Whether nodes only turn on the spot. */
  readonly spin: boolean;
  readonly loose: Loose;
}

/** Shifts below this part of what the turns would move over the size of the frame are rounding. */
const STILL = 1e-6;

/** Equal movements differ by no more than this part: the first node of them is named. */
const SAME = 1e-6;

/** Names the node that moves most in a loose movement, and in which way. */
export function nameLoose(nodes: readonly FrameNode[], unknown: Int32Array, mode: Float64Array): LooseMode {
  const shift = largest(unknown, mode, 0);
  const turn = largest(unknown, mode, 3);
  const spin = shift.size <= STILL * turn.size * extent(nodes);
  const { at, value } = spin ? turn : shift;
  const unit = spin ? radians(1) : 1;
  const node = nodes[Math.floor(at / 6)]!.name;
  const loose = { node, direction: DOFS[at % 6]!, moves: movesOf(nodes, unknown, mode, unit / value) };
  return { mode, spin, loose };
}

/** Whether loads push along a loose movement, so that it runs away. */
export function drives(load: Float64Array, { mode }: LooseMode): boolean {
  let work = 0;
  let size = 0;
  mode.forEach((x, i) => {
    work += x * load[i]!;
    size += Math.abs(x * load[i]!);
  });
  return Math.abs(work) > 1e-9 * size;
}

/** The largest of the shifts (from 0) or turns (from 3) of all nodes. */
function largest(unknown: Int32Array, mode: Float64Array, from: 0 | 3): { at: number; size: number; value: number } {
  let best = { at: from as number, size: 0, value: 1 };
  unknown.forEach((u, at) => {
    if (u < 0 || at % 6 < 3 !== (from === 0)) return;
    const value = mode[u]!;
    if (Math.abs(value) > best.size * (1 + SAME)) best = { at, size: Math.abs(value), value };
  });
  return best;
}

/** Diagonal of the box around the nodes, mm. */
function extent(nodes: readonly FrameNode[]): number {
  const spans = [0, 1, 2].map((k) => {
    const all = nodes.map((n) => n.at[k]!);
    return Math.max(...all) - Math.min(...all);
  });
  return Math.hypot(...spans);
}
