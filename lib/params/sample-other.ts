import type { Mm } from '../units/mm.ts';
import type { DivisionParam, Kind, LengthsParam, Param, ParamOf, ValueOf } from './param.ts';
import { readParam } from './read-param.ts';

type Sampler<P extends Param> = (param: P, current: ValueOf<P>) => readonly ValueOf<P>[];

/** Moves that are tried, in parts of the range. */
const MOVES = [0.1, -0.1, 0.25, -0.25, 0.5, -0.5];

/** The nearest 64th of an inch: 1/64 in is 127/320 mm. */
const rounded = (mm: Mm): Mm => (Math.round((mm * 320) / 127) * 127) / 320;

const SAMPLERS: { readonly [K in Kind]: Sampler<ParamOf<K>> } = {
  length: moved,
  lengths: otherLengths,
  division: otherDivision,
  count: otherCounts,
  quantity: ({ min, max }, current) => [...MOVES.map((move) => tidy(current + move * (max - min))), min, max],
  choice: ({ options }, current) => {
    const at = options.indexOf(current) + 1;
    return [...options.slice(at), ...options.slice(0, at)];
  },
  flag: (_, current) => [!current],
  text: ({ maxLength }, current) => [`${current}x`, current.slice(1), 'x'.slice(0, maxLength)],
};

/**
 * Different values inside the own range of a parameter, small moves first; the same every time. Rules are not asked.
 * Empty when the range holds only the current value.
 */
export function sampleOthers<P extends Param>(param: P, current: ValueOf<P>): readonly ValueOf<P>[] {
  const same = JSON.stringify(current);
  return (SAMPLERS[param.kind] as unknown as Sampler<P>)(param, current).filter(
    (value) => JSON.stringify(value) !== same && !readParam(param, value).faults,
  );
}

/** The first of them. */
export function sampleOther<P extends Param>(param: P, current: ValueOf<P>): ValueOf<P> | undefined {
  return sampleOthers(param, current)[0];
}

function moved({ min, max }: { readonly min: Mm; readonly max: Mm }, current: Mm): readonly Mm[] {
  const values = MOVES.map((move) => current + move * (max - min));
  return [...values.map(rounded), ...values, min, max];
}

function otherLengths(param: LengthsParam, current: readonly Mm[]): readonly (readonly Mm[])[] {
  const [first, ...rest] = current;
  const middle = (param.min + param.max) / 2;
  if (first === undefined) return Array.from({ length: param.maxItems }, (_, n) => Array(n + 1).fill(middle));
  return [...moved(param, first).map((value) => [value, ...rest]), rest, [...current, middle]];
}

function otherCounts({ min, max }: { readonly min: number; readonly max: number }, current: number): readonly number[] {
  return [current + 1, current - 1, current + 2, current - 2, min, max];
}

function otherDivision(param: DivisionParam, current: number | readonly Mm[]): readonly (number | readonly Mm[])[] {
  if (typeof current === 'number') return otherCounts(param, current);
  const [first = param.minWidth, ...rest] = current;
  const widths = moved({ min: param.minWidth, max: param.maxWidth }, first);
  return [...widths.map((value) => [value, ...rest]), ...otherCounts(param, current.length)];
}

const tidy = (value: number): number => Number(value.toFixed(6));
