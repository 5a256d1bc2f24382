import type { BoardPlan, PlacedPart } from '../../../lib/derive/lumber/cut-plan/cut-plan.ts';

/**
 * Whether the places of a board, whatever its cuts, are a pattern of two stages and a trimming cut with rips first: every
 * part starts on the near edge of a lane of full length, lanes lie beside each other, the parts of a lane one behind the
 * other. No kerf.
 */
export function isTwoStages({ placed }: BoardPlan): boolean {
  const starts = [...new Set(placed.map(({ y }) => y))].sort((a, b) => a - b);
  const lanes = starts.map((start) => placed.filter(({ y }) => y === start));
  const isClear = (lane: readonly PlacedPart[], n: number): boolean => {
    const depth = Math.max(...lane.map(({ width }) => width));
    const inOrder = [...lane].sort((a, b) => a.x - b.x);
    const beside = starts[n]! + depth <= (starts[n + 1] ?? Infinity);
    return beside && inOrder.every((part, k) => k === 0 || inOrder[k - 1]!.x + inOrder[k - 1]!.length <= part.x);
  };
  return lanes.every(isClear);
}
