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

/** Most pieces that are put together and measured for one way of one lever. */
const TRIES = 16;

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

/** A piece that was tried: so many steps on, and what was measured of it. */
interface Try {
  readonly steps: number;
  readonly reached: number | undefined;
}

/** A try that reaches the limit. */
interface Good extends Try {
  readonly reached: number;
}

/** What the tries have told so far. */
interface Known {
  /** The furthest try that falls short, and the one before it. */
  readonly short: Try;
  readonly before?: Try;
  /** The nearest try that reaches the limit. */
  readonly good?: Good;
  /** The least number of steps that need not be tried. */
  readonly upper: number;
  /** Whether `upper` was refused, or led away from the limit: then the last step before it may be no better. */
  readonly blocked: boolean;
}

/** A lever with no more steps than this is tried step by step: one stretcher may be refused where two are not. */
const FEW = 4;

/**
 * The least number of steps that reaches the limit. The first step tells whether the lever helps at all; from there
 * straight lines through the last two tries tell how far to go, and the least step is closed in from both sides.
 */
function leastMoveThatWay(
  tune: Tune,
  goal: Goal,
  path: string,
  start: number | undefined,
  way: 1 | -1,
): Found | undefined {
  const { valueAt, most } = gridOf(tune, path, way);
  const measured = (steps: number): Try => {
    const moved = tune.moved(path, valueAt(steps));
    return { steps, reached: moved && goal.measure(moved) };
  };
  const good = most <= FEW ? firstOf(goal, measured, most) : closedIn(goal, measured, most, start);
  return good && { value: valueAt(good.steps), reached: good.reached };
}

function firstOf(goal: Goal, measured: (steps: number) => Try, most: number): Good | undefined {
  for (let steps = 1; steps <= most; steps++) {
    const { reached } = measured(steps);
    if (reached !== undefined && excess(goal, reached) <= REACHED) return { steps, reached };
  }
  return undefined;
}

function closedIn(
  goal: Goal,
  measured: (steps: number) => Try,
  most: number,
  start: number | undefined,
): Good | undefined {
  let known: Known = { short: { steps: 0, reached: start }, upper: most + 1, blocked: false };
  let next = 1;
  for (let k = 0; k < TRIES && next > known.short.steps && next < known.upper; k++) {
    const learned = learn(goal, known, measured(next));
    if (!learned) break;
    known = learned;
    next = nextTry(goal, known, k % 2 === 1);
  }
  return known.good;
}

/** The values of a lever one way, counted in steps from where it stands, without the dust of floating point. */
function gridOf(
  tune: Tune,
  path: string,
  way: 1 | -1,
): { readonly valueAt: (steps: number) => number; readonly most: number } {
  const now = tune.value(path)!;
  const step = tune.step(path);
  const { min, max } = tune.limits(path);
  const from = way > 0 ? Math.floor(now / step + DUST) : Math.ceil(now / step - DUST);
  const last = way > 0 ? Math.floor(max / step + DUST) : Math.ceil(min / step - DUST);
  return { valueAt: (steps) => Number(((from + steps * way) * step).toFixed(9)), most: (last - from) * way };
}

const DUST = 1e-9;

/** What is known after one more try; undefined when the lever is of no use. */
function learn(goal: Goal, known: Known, tried: Try): Known | undefined {
  const { steps, reached } = tried;
  const { short, good } = known;
  if (reached === undefined) return { ...known, upper: steps, blocked: true };
  if (excess(goal, reached) <= REACHED) return { ...known, good: { steps, reached }, upper: steps };
  const nearer = short.reached === undefined ? 1 : excess(goal, short.reached) - excess(goal, reached);
  if (good || nearer > SAME) return { ...known, before: short, short: tried };
  return nearer < -SAME && short.steps > 0 ? { ...known, upper: steps, blocked: true } : undefined;
}

/** How far a value is on the wrong side of the limit. */
const excess = ({ want, limit }: Goal, value: number): number => (want === 'at most' ? value - limit : limit - value);

/** A value this near to its limit keeps it, as the verdicts have it. */
const REACHED = 1e-6;

/** A lever that moves the value by less than this does nothing. */
const SAME = 1e-9;

/**
 * Where the straight line through the last two tries meets the limit, between what is known; in the middle when the line
 * leads to where nothing is to be found, or when it is time to `halve` what is left between a good try and a short one.
 */
function nextTry(goal: Goal, { short, before, good, upper, blocked }: Known, halve: boolean): number {
  const middle = Math.floor((short.steps + upper) / 2);
  const guess = good && halve ? middle : crossing(goal, short, good ?? before);
  const wanted = guess ?? 2 * short.steps;
  return Math.max(short.steps + 1, blocked && wanted >= upper ? middle : Math.min(wanted, upper - 1));
}

/** The number of steps at which the line through two tries meets the limit; undefined when it does not tell. */
function crossing(goal: Goal, short: Try, other: Try | undefined): number | undefined {
  if (short.reached === undefined || other?.reached === undefined) return undefined;
  const perStep = (other.reached - short.reached) / (other.steps - short.steps);
  const steps = Math.ceil(short.steps + (goal.limit - short.reached) / perStep - DUST);
  return Number.isFinite(steps) ? steps : undefined;
}
