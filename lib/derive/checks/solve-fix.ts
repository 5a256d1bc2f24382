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

/** Most pieces that are put together and measured for one lever. */
const TRIES = 9;

/**
 * The least change of each lever alone that brings the value to its limit, found by trying: "top.edgeThickness 1 3/8 in
 * brings 2.8 mm". Levers that cannot do it alone within their limits and rules are left out.
 *
 * @param now the value as the piece is; undefined when it cannot be measured yet.
 */
export function solvedFixes(context: CheckContext, goal: Goal, now?: number): string[] {
  const { tune } = context;
  if (!tune) return [];
  const start = now ?? goal.measure(context);
  const fixes: string[] = [];
  for (const path of goal.levers) {
    if (fixes.length === MOST) break;
    if (tune.value(path) === undefined) continue;
    const found = leastMove(tune, goal, path, start);
    if (found) fixes.push(`${tune.say(path, found.value)} brings ${goal.say(found.reached)}`);
  }
  return fixes;
}

interface Found {
  readonly value: number;
  readonly reached: number;
}

/** The move of one lever, up or down, whichever way helps. */
function leastMove(tune: Tune, goal: Goal, path: string, start: number | undefined): Found | undefined {
  return leastMoveThatWay(tune, goal, path, start, 1) ?? leastMoveThatWay(tune, goal, path, start, -1);
}

/**
 * The least number of steps that reaches the limit. The first step tells whether the lever helps at all; from there the
 * slope tells how far to go, and the least step is closed in from both sides.
 */
function leastMoveThatWay(
  tune: Tune,
  goal: Goal,
  path: string,
  start: number | undefined,
  way: 1 | -1,
): Found | undefined {
  const now = tune.value(path)!;
  const step = tune.step(path);
  const { min, max } = tune.limits(path);
  const valueAt = (steps: number): number => snapped(now, steps * way, step);
  const measure = (steps: number): number | undefined => {
    const moved = tune.moved(path, valueAt(steps));
    return moved && goal.measure(moved);
  };
  const isGood = (reached: number): boolean =>
    goal.want === 'at most' ? reached <= goal.limit : reached >= goal.limit;
  let most = Math.floor((way > 0 ? max - now : now - min) / step + 1e-9);
  let short = { steps: 0, reached: start };
  let good: { steps: number; reached: number } | undefined;
  let next = 1;
  for (let k = 0; k < TRIES && next <= most && next > short.steps; k++) {
    const reached = measure(next);
    if (reached === undefined) most = next - 1;
    else if (isGood(reached)) good = { steps: next, reached };
    else if (!helps(goal, short.reached, reached)) break;
    else short = { steps: next, reached };
    if (good && good.steps - short.steps === 1) break;
    next = nextTry(goal, start, short, good?.steps, most);
  }
  return good && { value: valueAt(good.steps), reached: good.reached };
}

const helps = (goal: Goal, before: number | undefined, after: number): boolean =>
  before === undefined || (goal.want === 'at most' ? after < before - SAME : after > before + SAME);

/** A lever that moves the value by less than this does nothing. */
const SAME = 1e-9;

/** Where the straight line through the start and the last try that fell short meets the limit; between what is known. */
function nextTry(
  goal: Goal,
  start: number | undefined,
  short: { readonly steps: number; readonly reached: number | undefined },
  good: number | undefined,
  most: number,
): number {
  const upper = good ?? most + 1;
  if (start === undefined || short.reached === undefined || short.steps === 0)
    return Math.floor((short.steps + upper) / 2);
  const perStep = (short.reached - start) / short.steps;
  const guess = Math.ceil((goal.limit - start) / perStep);
  const reach = Number.isFinite(guess) ? guess : 2 * short.steps;
  return Math.max(short.steps + 1, Math.min(reach, upper - 1));
}

/** `count` steps on from `now`, on the grid of the step, without the dust of floating point. */
function snapped(now: number, count: number, step: number): number {
  const from = count > 0 ? Math.floor(now / step + 1e-9) : Math.ceil(now / step - 1e-9);
  return Number(((from + count) * step).toFixed(9));
}
