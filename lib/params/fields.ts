import type { Mm } from '../units/mm.ts';
import { parseLength } from '../units/parse-length.ts';
import type {
  ChoiceParam,
  CountParam,
  DivisionParam,
  FlagParam,
  LengthParam,
  LengthsParam,
  QuantityParam,
  TextParam,
} from './param.ts';

/** Text with its unit, or a number of mm. */
type Length = Mm | string;

interface Words {
  readonly label: string;
  readonly help?: string;
  readonly because?: string;
}

interface Range<T> {
  readonly min: T;
  readonly max: T;
}

/** Most pieces in a list when the spec does not say. */
const MANY = 64;

/** Longest text when the spec does not say. */
const LONG = 200;

export function length(o: Words & Range<Length> & { readonly default: Length }): LengthParam {
  const written = { default: write(o.default), min: limit(o.min), max: limit(o.max) };
  return { ...words(o), kind: 'length', default: mm(o.default), min: mm(o.min), max: mm(o.max), written };
}

/** A list of lengths; `min` and `max` hold for each. */
export function lengths(
  o: Words &
    Range<Length> & { readonly default: readonly Length[]; readonly minItems?: number; readonly maxItems?: number },
): LengthsParam {
  const { minItems = 0, maxItems = MANY } = o;
  const written = { default: o.default.map(write).join(', '), min: limit(o.min), max: limit(o.max) };
  const list = o.default.map(mm);
  return { ...words(o), kind: 'lengths', default: list, min: mm(o.min), max: mm(o.max), minItems, maxItems, written };
}

/** So many equal pieces (`min` to `max` of them), or the widths of the pieces (each `minWidth` to `maxWidth`). */
export function division(
  o: Words &
    Range<number> & {
      readonly default: number | readonly Length[];
      readonly minWidth: Length;
      readonly maxWidth: Length;
    },
): DivisionParam {
  const even = typeof o.default === 'number';
  const written = {
    default: even ? `${o.default}` : (o.default as readonly Length[]).map(write).join(', '),
    min: `${o.min}`,
    max: `${o.max}`,
    minWidth: write(o.minWidth),
    maxWidth: write(o.maxWidth),
  };
  const value = even ? (o.default as number) : (o.default as readonly Length[]).map(mm);
  const widths = { minWidth: mm(o.minWidth), maxWidth: mm(o.maxWidth) };
  return { ...words(o), kind: 'division', default: value, min: o.min, max: o.max, ...widths, written };
}

export function count(o: Words & Range<number> & { readonly default: number }): CountParam {
  return { ...words(o), kind: 'count', default: o.default, min: o.min, max: o.max };
}

/** A number in a unit that is no length: `%`, `deg`, `kg`; empty for a plain ratio. */
export function quantity(
  o: Words & Range<number> & { readonly unit: string; readonly default: number },
): QuantityParam {
  return { ...words(o), kind: 'quantity', unit: o.unit, default: o.default, min: o.min, max: o.max };
}

/** One of the options; without a default the first. */
export function choice<const O extends string>(
  o: Words & { readonly options: readonly O[]; readonly default?: NoInfer<O> },
): ChoiceParam<O> {
  return { ...words(o), kind: 'choice', options: o.options, default: o.default ?? o.options[0]! };
}

export function flag(o: Words & { readonly default: boolean }): FlagParam {
  return { ...words(o), kind: 'flag', default: o.default };
}

/** One line of text. */
export function text(o: Words & { readonly default: string; readonly maxLength?: number }): TextParam {
  return { ...words(o), kind: 'text', default: o.default, maxLength: o.maxLength ?? LONG };
}

function words({ label, help = '', because = '' }: Words) {
  return { label, help, because };
}

function mm(value: Length): Mm {
  return typeof value === 'string' ? parseLength(value) : value;
}

/** A limit of nothing needs no unit: `0 to 1/4 in`. */
const limit = (value: Length): string => (value === 0 ? '0' : write(value));

function write(value: Length): string {
  return typeof value === 'string' ? value : `${value} mm`;
}
