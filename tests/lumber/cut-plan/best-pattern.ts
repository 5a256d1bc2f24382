import type { CutKind } from '../../../lib/derive/lumber/cut-plan/cut-plan.ts';
import { gridOf } from '../../../lib/derive/lumber/cut-plan/grid-of.ts';
import { pricer } from '../../../lib/derive/lumber/cut-plan/pricer.ts';
import { withinDemand } from '../../../lib/derive/lumber/cut-plan/within-demand.ts';

/** One board and what may be cut from it, whole numbers; `length` lies along the cuts called horizontal. */
export interface OneBoard {
  readonly length: number;
  readonly width: number;
  readonly items: readonly (readonly [length: number, width: number, value: number, copies: number])[];
}

/**
 * What the core says of the most valuable pattern of one board. `most`: no pattern of the class with so many copies a
 * board is worth more (the copies hold for a lane, not for the board). `found`: worth of a pattern that keeps the copies.
 */
export function bestPattern({ length, width, items }: OneBoard, first: CutKind): { most: number; found: number } {
  const parts = items.map(([l, w, , copies], n) => ({ id: `P${n}`, length: l, width: w, count: copies }));
  const grid = gridOf({ parts, boards: [{ id: 'B', length, width, cost: 1, avoid: [] }], kerf: 0, first });
  // Items alike in size lie in one part of the grid: the most valuable come first, which `most` may not know.
  const members = grid.parts.map((p) =>
    p.members
      .flatMap(({ id, count }) => Array.from({ length: count }, () => items[Number(id.slice(1))]![2]))
      .sort((a, b) => b - a),
  );
  const values = members.map((own) => own[0]!);
  const demand = grid.parts.map((p) => p.count);
  const price = pricer(grid);
  price.prepare(values, demand);
  const most = price.best(0);
  const pattern = withinDemand(grid, price, values, price.pattern(), demand);
  const worth = (n: number, i: number): number => members[i]!.slice(0, n).reduce((sum, v) => sum + v, 0);
  return { most, found: pattern.counts.reduce((sum, n, i) => sum + worth(n, i), 0) };
}
