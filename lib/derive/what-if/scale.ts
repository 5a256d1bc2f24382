import type { NumberLook } from '../../model/finding-number.ts';

/** A number axis: its ends, and round numbers between them with their texts. */
export interface Scale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
}

/** Most steps between the ticks of an axis. */
const MOST = 5;

/** Room beyond the least and the greatest, in parts of the axis. */
const ROOM = 0.06;

/** mm: fractions of an inch, inches, feet. */
const INCH_STEPS = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 3, 6, 12, 24, 48].map((inches) => inches * 25.4);

/** An axis that holds all values with a little room, and has ticks on round numbers; it starts at nothing unless all lie far from it. */
export function scaleFor(values: readonly number[], look: NumberLook): Scale {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (least === most) return flat(least, look);
  const from = least > 0 && least < most * 0.6 ? 0 : least;
  const to = most < 0 && most > least * 0.6 ? 0 : most;
  const span = to - from;
  const step = look.fractions ? inchStep(span) : roundStep(span / look.size) * look.size;
  const low = from === 0 ? 0 : from - span * ROOM;
  const high = to === 0 ? 0 : to + span * ROOM;
  const [first, last] = [Math.ceil(low / step - 1e-9), Math.floor(high / step + 1e-9)];
  const ticks = Array.from({ length: last - first + 1 }, (_, k) => Number(((first + k) * step).toPrecision(12)));
  return {
    low,
    high,
    ticks: ticks.map((value) => ({ value, text: look.bare(value) })),
  };
}

/** Around a single number, which is its only tick. */
function flat(value: number, look: NumberLook): Scale {
  const room = Math.abs(value) * ROOM || 1;
  return { low: value - room, high: value + room, ticks: [{ value, text: look.bare(value) }] };
}

const inchStep = (span: number): number => INCH_STEPS.find((step) => span / step <= MOST) ?? roundStep(span);

/** 1, 2 or 5 times a power of ten. */
function roundStep(span: number): number {
  const power = 10 ** Math.floor(Math.log10(span / MOST));
  return power * (([1, 2, 5, 10] as const).find((times) => span / (times * power) <= MOST) ?? 10);
}
