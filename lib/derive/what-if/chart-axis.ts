import type { ChartAxis } from './chart.ts';
import type { Axis, Step } from './what-if.ts';

/** Room between the first value and the edge of a panel, in parts of its width. */
const EDGE = 0.06;

/** An axis with its values at their places: numbers to scale, choices evenly apart. */
export function chartAxis(axis: Axis): ChartAxis {
  const { steps, now, path } = axis;
  const unit = commonUnit(steps);
  const place = placing(axis);
  return {
    label: `${path}${unit && `, ${unit}`}`,
    ticks: steps.map((step, k) => ({ at: place(step, k), text: bare(step.text, unit) })),
    now: nowAt(axis, now, place),
  };
}

/** An axis of cells: one place for each step. */
export function cellAxis({ steps, now, path }: Axis): ChartAxis {
  const unit = commonUnit(steps);
  const k = steps.findIndex(({ text }) => text === now.text);
  return {
    label: `${path}${unit && `, ${unit}`}`,
    ticks: steps.map(({ text }, i) => ({ at: (i + 0.5) / steps.length, text: bare(text, unit) })),
    now: k < 0 ? undefined : (k + 0.5) / steps.length,
  };
}

/** Where the bands of the values meet: halfway between them. */
export function bordersOf({ ticks }: ChartAxis): readonly number[] {
  const inner = ticks.slice(1).map(({ at }, k) => (at + ticks[k]!.at) / 2);
  return ticks[0]!.at <= ticks.at(-1)!.at ? [0, ...inner, 1] : [1, ...inner, 0];
}

type Placing = (step: Step, k: number) => number;

function placing({ steps }: Axis): Placing {
  const numbers = steps.flatMap(({ number }) => (number === undefined ? [] : [number]));
  if (numbers.length < steps.length) return (_, k) => (k + 0.5) / steps.length;
  const [low, high] = [Math.min(...numbers), Math.max(...numbers)];
  return ({ number = low }) => EDGE + ((number - low) / (high - low)) * (1 - 2 * EDGE);
}

function nowAt({ steps }: Axis, now: Step, place: Placing): number | undefined {
  const k = steps.findIndex(({ text }) => text === now.text);
  if (k >= 0) return place(steps[k]!, k);
  if (now.number === undefined || steps.some(({ number }) => number === undefined)) return undefined;
  const at = place(now, 0);
  return at >= 0 && at <= 1 ? at : undefined;
}

/** `in` when all values are in inches; empty when they are of several units, or of none. */
function commonUnit(steps: readonly Step[]): string {
  const units = new Set(steps.map(({ text }) => /^-?[\d/. ]+ (\D+)$/.exec(text)?.[1] ?? ''));
  return units.size === 1 ? [...units][0]! : '';
}

const bare = (text: string, unit: string): string => (unit ? text.slice(0, -unit.length - 1) : text);
