import type { FillTask } from './fill.ts';
import type { Pattern } from './pattern.ts';
import { withinDemand } from './within-demand.ts';
import type { Work } from './work.ts';

/** How much more a member of the group counts. */
const LIFT = 50;

/** Boards that hold a group, of which the cheapest for what it brings is opened. */
const CANDIDATES = 4;

/** Share of the tries in which other groups may lie in the same board. */
const OTHERS = 0.5;

/**
 * Opens a board for every group still wanted, largest group first, and fills its rest with other parts. False when some
 * group found no board. Finding a board is by trying values: a group that fits only just may be missed.
 */
export function placeGroups(
  work: Work,
  task: FillTask,
  left: number[],
  free: readonly number[],
  open: (pattern: Pattern) => void,
): boolean {
  for (;;) {
    const group = groupsWanted(work, left)[0];
    if (group === undefined) return true;
    const found = boardsFor(work, task, group, left, free);
    if (found.length === 0) return false;
    open(found.reduce((a, b) => (b.rank > a.rank ? b : a)).pattern);
  }
}

/** Numbers of the groups with parts still to cut, by falling area. */
function groupsWanted({ grid }: Work, left: readonly number[]): number[] {
  const area = new Map<number, number>();
  grid.parts.forEach((p, i) => {
    if (p.group >= 0 && left[i]! > 0) area.set(p.group, (area.get(p.group) ?? 0) + p.area * p.count);
  });
  return [...area.keys()].sort((a, b) => area.get(b)! - area.get(a)! || a - b);
}

function boardsFor(work: Work, task: FillTask, group: number, left: readonly number[], free: readonly number[]) {
  const { grid, chance } = work;
  const need = grid.parts.reduce((sum, p) => sum + (p.group === group ? p.area * p.count : 0), 0);
  const boards = free
    .flatMap((n, b) => (n > 0 && grid.boards[b]!.area >= need ? [b] : []))
    .map((b) => ({ b, rank: grid.boards[b]!.cost * (1 + task.noise * (chance() - 0.5)) }))
    .sort((x, y) => x.rank - y.rank || x.b - y.b);
  const found: { pattern: Pattern; rank: number }[] = [];
  const others = chance() < OTHERS;
  for (const { b } of boards) {
    const pattern = wholeGroup(work, task.values, group, left, b, others);
    if (!pattern) continue;
    const value = pattern.counts.reduce((sum, n, i) => sum + n * task.values[i]!, 0);
    found.push({ pattern, rank: (value / grid.boards[b]!.cost) * (1 + task.noise * (chance() - 0.5)) });
    if (found.length >= CANDIDATES) break;
  }
  return found;
}

/** A pattern of the board that holds the whole group, and other parts beside it; undefined when none was found. */
function wholeGroup(
  { grid, spare }: Work,
  values: Float64Array,
  group: number,
  left: readonly number[],
  board: number,
  others: boolean,
): Pattern | undefined {
  const lifted = values.map((v, i) => {
    const own = grid.parts[i]!.group;
    return own === group ? v * LIFT : (own >= 0 && !others) || left[i]! <= 0 ? 0 : v;
  });
  spare.prepare(lifted, left);
  spare.best(board);
  const pattern = withinDemand(grid, spare, lifted, spare.pattern(), left);
  return grid.parts.some((part, i) => part.group === group && pattern.counts[i]! > 0) ? pattern : undefined;
}
