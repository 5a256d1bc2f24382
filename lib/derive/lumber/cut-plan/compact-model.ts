import type { Program, Solver } from '../master.ts';
import type { CutKind } from './cut-plan.ts';
import type { Grid } from './grid.ts';
import type { Lane, Pattern, Spot } from './pattern.ts';

/** What the compact model says of a set of boards. */
export interface Packing {
  /** `none`: these boards cannot take all parts. `unknown`: the work was spent before. */
  readonly verdict: 'packed' | 'none' | 'unknown';
  readonly patterns: readonly Pattern[];
}

/** A lane that may be cut; its deepest part opens it. */
interface PossibleLane {
  readonly board: number;
  readonly first: CutKind;
  readonly opener: number;
  /** Columns: is it cut, and how many more of each part it holds. */
  readonly open: number;
  readonly more: ReadonlyMap<number, number>;
}

/**
 * Can these boards take all parts? Written out in whole numbers: every lane is opened by one part, its deepest, and holds
 * others that are no deeper; each board is ripped first or crosscut first; lanes fit the board's depth, their parts its
 * length. Zones are left out: `none` holds with zones too, `packed` is for clear boards only.
 */
export function compactPacking(solver: Solver, grid: Grid, boards: readonly number[], nodes: number): Packing {
  const program = solver.program();
  try {
    const demand = grid.parts.map((p) => program.addRow(p.count, p.count));
    const lanes = boards.map((board) => lanesOfBoard(program, grid, board, demand));
    const { columns, proved } = program.solveWhole({ nodes });
    if (columns) return { verdict: 'packed', patterns: patternsOf(grid, boards, lanes, columns) };
    return { verdict: proved ? 'none' : 'unknown', patterns: [] };
  } finally {
    program.dispose();
  }
}

interface LanesOfBoard {
  readonly lanes: readonly PossibleLane[];
}

/** Both directions of one board; a column of 0 and 1 chooses between them. */
function lanesOfBoard(program: Program, grid: Grid, board: number, demand: readonly number[]): LanesOfBoard {
  const { length, width } = grid.boards[board]!;
  const { kerf } = grid;
  // depth rows: sum of lanes' depths - room * chosen <= 0, with chosen = rip for the first and 1 - rip for the second
  const ripDepth = program.addRow(-Infinity, 0);
  const crossDepth = program.addRow(-Infinity, length + kerf);
  const rip = program.addColumn(0, grid.first === 'rip' ? 1 : 0, grid.first === 'crosscut' ? 0 : 1, {
    rows: [ripDepth, crossDepth],
    values: [-(width + kerf), length + kerf],
  });
  program.makeWhole(rip);
  return {
    lanes: [
      ...lanesOfWay(program, grid, board, 'rip', demand, ripDepth),
      ...lanesOfWay(program, grid, board, 'crosscut', demand, crossDepth),
    ],
  };
}

function lanesOfWay(
  program: Program,
  grid: Grid,
  board: number,
  first: CutKind,
  demand: readonly number[],
  depthRow: number,
): PossibleLane[] {
  const { parts, kerf } = grid;
  const b = grid.boards[board]!;
  const rip = first === 'rip';
  const depth = (i: number): number => (rip ? parts[i]!.width : parts[i]!.length);
  const run = (i: number): number => (rip ? parts[i]!.length : parts[i]!.width) + kerf;
  const [deep, long] = rip ? [b.width + kerf, b.length + kerf] : [b.length + kerf, b.width + kerf];
  const order = parts.map((_, i) => i).sort((x, y) => depth(x) - depth(y) || x - y);
  const lanes: PossibleLane[] = [];
  const moreParts = (shallower: readonly number[], opener: number, room: number): Map<number, number> => {
    const fits = (i: number): number => Math.min(parts[i]!.count, Math.floor((long - run(opener)) / run(i)));
    return new Map(
      shallower
        .filter((i) => fits(i) > 0)
        .map((i) => {
          const column = program.addColumn(0, 0, fits(i), { rows: [demand[i]!, room], values: [1, run(i)] });
          program.makeWhole(column);
          return [i, column];
        }),
    );
  };
  order.forEach((opener, q) => {
    if (depth(opener) + kerf > deep || run(opener) > long) return;
    let before: number | undefined;
    for (let copy = 0; copy < Math.min(parts[opener]!.count, Math.floor(deep / (depth(opener) + kerf))); copy++) {
      const room = program.addRow(-Infinity, 0);
      // lanes of one opener are alike: the next is cut only when the one before is
      const chain = program.addRow(copy === 0 ? -Infinity : 0, Infinity);
      const open = program.addColumn(0, 0, 1, {
        rows: [demand[opener]!, depthRow, room, chain],
        values: [1, depth(opener) + kerf, run(opener) - long, -1],
      });
      program.makeWhole(open);
      if (before !== undefined) program.changeEntry(chain, before, 1);
      before = open;
      lanes.push({ board, first, opener, open, more: moreParts(order.slice(0, q + 1), opener, room) });
    }
  });
  return lanes;
}

function patternsOf(grid: Grid, boards: readonly number[], lanes: readonly LanesOfBoard[], x: Float64Array): Pattern[] {
  return lanes.map((own, n) => {
    const used = own.lanes.filter((lane) => Math.round(x[lane.open]!) === 1);
    const first = used[0]?.first ?? 'rip';
    const cut: Lane[] = [];
    const spots: Spot[] = [];
    let at = 0;
    for (const lane of used) {
      const opener = grid.parts[lane.opener]!;
      const to = at + (first === 'rip' ? opener.width : opener.length);
      spots.push(...spotsAlong(grid, first, at, heldIn(lane, x)));
      cut.push({ from: at, to });
      at = to + grid.kerf;
    }
    const counts = grid.parts.map(() => 0);
    for (const { part } of spots) counts[part]!++;
    return { board: boards[n]!, first, lanes: cut, spots, counts };
  });
}

/** The parts of a lane, one by one, its opener first. */
const heldIn = ({ opener, more }: PossibleLane, x: Float64Array): number[] => [
  opener,
  ...[...more].flatMap(([part, column]) => Array.from({ length: Math.round(x[column]!) }, () => part)),
];

/** Parts one after the other along a lane that starts at `at`. */
function spotsAlong({ parts, kerf }: Grid, first: CutKind, at: number, held: readonly number[]): Spot[] {
  let along = 0;
  return held.map((part) => {
    const spot = first === 'rip' ? { part, x: along, y: at } : { part, x: at, y: along };
    along += (first === 'rip' ? parts[part]!.length : parts[part]!.width) + kerf;
    return spot;
  });
}
