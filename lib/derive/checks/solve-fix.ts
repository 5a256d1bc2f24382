import type { CheckContext, Tune } from './check.ts';

export interface Goal {
  /** What is measured, of the piece as it would be; undefined when it cannot be measured there. */
  readonly measure: (context: CheckContext) => number | undefined;
  readonly limit: number;
  /** The value must come down to the limit, or up to it. */
  readonly want: 'at most' | 'at least';
  /** Parameters that a maker would turn to, the best first; those that the design does not have are passed over. */
  readonly levers: readonly string[];
  /** "2.8 mm". */
  readonly say: (value: number) => string;
}

/** Most fixes that a finding shows. */
const MOST = 2;

/** Tries on the way to the least change: halving a range of 64 steps twice over. */
const TRIES = 12;

/**
 * The least change of each lever alone that brings the value to its limit, found by trying: "top.edgeThickness 1 3/8 in
 * brings 2.8 mm". Levers that cannot do it alone within their limits and rules are left out.
 */
export function solvedFixes(context: CheckContext, goal: Goal): string[] {
  const { tune } = context;
  if (!tune) return [];
  const fixes: string[] = [];
  for (const path of goal.levers) {
    if (fixes.length === MOST) break;
    const now = tune.value(path);
    if (now === undefined) continue;
    const found = leastMove(tune, goal, path, now);
    if (found) fixes.push(`${tune.say(path, found.value)} brings ${goal.say(found.reached)}`);
  }
  return fixes;
}

interface Found {
  readonly value: number;
  readonly reached: number;
  readonly steps: number;
}

/** The smaller of the moves up and down. */
function leastMove(tune: Tune, goal: Goal, path: string, now: number): Found | undefined {
  const moves = [1, -1].flatMap((way) => leastMoveThatWay(tune, goal, path, now, way) ?? []);
  return moves.sort((a, b) => a.steps - b.steps)[0];
}

function leastMoveThatWay(tune: Tune, goal: Goal, path: string, now: number, way: number): Found | undefined {
  const step = tune.step(path);
  const { min, max } = tune.limits(path);
  const most = Math.floor(((way > 0 ? max - now : now - min) + 1e-9) / step);
  const at = (steps: number): Found | undefined => {
    const value = snapped(now, steps * way, step);
    const context = tune.moved(path, value);
    const reached = context && goal.measure(context);
    const good = reached !== undefined && (goal.want === 'at most' ? reached <= goal.limit : reached >= goal.limit);
    return good ? { value, reached, steps } : undefined;
  };
  // Doubling finds a move that does it, halving the least one.
  let bad = 0;
  let good: Found | undefined;
  for (let steps = 1; steps <= most && !good; steps *= 2) {
    good = at(steps);
    if (!good) bad = steps;
  }
  for (let k = 0; good && good.steps - bad > 1 && k < TRIES; k++) {
    const middle = Math.floor((good.steps + bad) / 2);
    const tried = at(middle);
    if (tried) good = tried;
    else bad = middle;
  }
  return good;
}

/** `count` steps on from `now`, on the grid of the step, without the dust of floating point. */
function snapped(now: number, count: number, step: number): number {
  const from = count > 0 ? Math.floor(now / step + 1e-9) : Math.ceil(now / step - 1e-9);
  return Number(((from + count) * step).toFixed(9));
}
