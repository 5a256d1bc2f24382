import type { AvoidZone, CutBoard, CutPart, CutProblem } from './cut-problem.ts';
import { RULE_STEP } from './cut-problem.ts';
import { MOST_ZONES } from './free-runs.ts';
import type { Grid, GridBoard, GridPart, GridZone } from './grid.ts';
import { mergeZones } from './merge-zones.ts';

/** Lengths closer to a step than this share of it are taken for the step itself: leaves out the noise of inches in mm. */
const SNAP = 1e-6;

/** What the mean board costs after scaling: the solver likes costs between 1 and 1000. */
const MEAN_COST = 100;

/** Rounds parts up and boards down to the step, merges what is alike, and puts everything into one order. */
export function gridOf(problem: CutProblem): Grid {
  check(problem);
  const step = problem.step ?? RULE_STEP;
  const up = (mm: number): number => Math.ceil(mm / step - SNAP);
  const down = (mm: number): number => Math.floor(mm / step + SNAP);
  const kerf = up(problem.kerf);
  const words = [...new Set(problem.parts.flatMap((p) => p.together ?? []))].sort(byCode);
  const unit = problem.boards.reduce((sum, b) => sum + b.cost, 0) / Math.max(1, problem.boards.length) / MEAN_COST;
  return {
    parts: partsOf(problem.parts, words, up),
    boards: boardsOf(problem.boards, kerf, unit || 1, up, down),
    kerf,
    groups: words.length,
    first: problem.first,
    step,
    unit: unit || 1,
  };
}

type Round = (mm: number) => number;

const byCode = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

function partsOf(parts: readonly CutPart[], words: readonly string[], up: Round): GridPart[] {
  const alike = grouped(parts, (p) => [up(p.length), up(p.width), p.together ? words.indexOf(p.together) : -1]);
  return alike.map(({ key: [length, width, group], of }) => ({
    length: length!,
    width: width!,
    count: of.reduce((sum, p) => sum + p.count, 0),
    area: length! * width!,
    group: group!,
    members: of.map(({ id, count }) => ({ id, count })).sort((a, b) => byCode(a.id, b.id)),
  }));
}

function boardsOf(boards: readonly CutBoard[], kerf: number, unit: number, up: Round, down: Round): GridBoard[] {
  const snapped = boards.map((board) => {
    const [length, width] = [down(board.length), down(board.width)];
    return { board, length, width, zones: zonesOf(board.avoid, length, width, kerf, up, down) };
  });
  const alike = grouped(snapped, ({ board, length, width, zones }) => [
    length,
    width,
    board.cost / unit,
    ...zones.flatMap((z) => [z.x0, z.x1, z.y0, z.y1]),
  ]);
  return alike.map(({ of }) => {
    const { length, width, zones, board } = of[0]!;
    const ids = of.flatMap(({ board: b }) => Array.from({ length: b.count ?? 1 }, () => b.id)).sort(byCode);
    return { length, width, area: length * width, cost: board.cost / unit, zones, ids };
  });
}

/** Zones within the board, rounded outwards, few enough to be told apart; one narrower than the blade still takes the blade's width. */
function zonesOf(avoid: readonly AvoidZone[], length: number, width: number, kerf: number, up: Round, down: Round) {
  const zones = avoid.map(({ from, to, near, far }): GridZone => {
    const [x0, x1] = [Math.max(0, down(from)), Math.min(length, up(to))];
    const [y0, y1] = [Math.max(0, down(near)), Math.min(width, up(far))];
    return { x0, x1: Math.min(length, Math.max(x1, x0 + kerf)), y0, y1: Math.min(width, Math.max(y1, y0 + kerf)) };
  });
  const order = (a: GridZone, b: GridZone): number => a.x0 - b.x0 || a.y0 - b.y0 || a.x1 - b.x1 || a.y1 - b.y1;
  const real = zones.filter((z) => z.x1 > z.x0 && z.y1 > z.y0).sort(order);
  return mergeZones(real, MOST_ZONES).sort(order);
}

/** What has the same row of numbers, by rising rows. */
function grouped<T>(items: readonly T[], keyOf: (item: T) => number[]): { key: number[]; of: T[] }[] {
  const groups = new Map<string, { key: number[]; of: T[] }>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key.join()) ?? { key, of: [] };
    group.of.push(item);
    groups.set(key.join(), group);
  }
  return [...groups.values()].sort((a, b) => compareRows(a.key, b.key));
}

function compareRows(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 ? a.length - b.length : a[at]! - (b[at] ?? -Infinity);
}

/** What a caller may never hand in: input of users is read and refused before. */
function check({ parts, boards, kerf, step }: CutProblem): void {
  const twice = (ids: readonly string[]): string | undefined => ids.find((id, i) => ids.indexOf(id) !== i);
  const repeated = twice(parts.map((p) => p.id)) ?? twice(boards.map((b) => b.id));
  if (repeated !== undefined) throw new RangeError(`${JSON.stringify(repeated)} stands twice in a cut problem`);
  const positive = [
    ...parts.flatMap((p) => [p.length, p.width]),
    ...boards.flatMap((b) => [b.length, b.width, b.cost]),
    step ?? RULE_STEP,
  ];
  const counts = [...parts.map((p) => p.count), ...boards.map((b) => b.count ?? 1)];
  const odd = positive.find((v) => !(v > 0 && v < Infinity)) ?? counts.find((c) => !(Number.isInteger(c) && c >= 0));
  if (odd !== undefined) throw new RangeError(`${odd} is no size, cost or count of a cut problem`);
  if (!(kerf >= 0)) throw new RangeError(`${kerf} is no kerf`);
}
