import type { Mm } from '../units/mm.ts';

interface Described {
  readonly label: string;
  readonly help: string;
  /** Why the range ends where it does; empty when nobody needs to be told. */
  readonly because: string;
}

/** Default and limits in the words of the spec, for tables and help. */
export interface Written {
  readonly default: string;
  readonly min: string;
  readonly max: string;
}

export interface LengthParam extends Described {
  readonly kind: 'length';
  readonly default: Mm;
  readonly min: Mm;
  readonly max: Mm;
  readonly written: Written;
}

/** A list of lengths, each within the same limits. */
export interface LengthsParam extends Described {
  readonly kind: 'lengths';
  readonly default: readonly Mm[];
  readonly min: Mm;
  readonly max: Mm;
  readonly minItems: number;
  readonly maxItems: number;
  readonly written: Written;
}

/** A width divided: into so many equal pieces, or into pieces of the listed widths. */
export interface DivisionParam extends Described {
  readonly kind: 'division';
  readonly default: number | readonly Mm[];
  /** Fewest and most pieces. */
  readonly min: number;
  readonly max: number;
  readonly minWidth: Mm;
  readonly maxWidth: Mm;
  readonly written: Written & { readonly minWidth: string; readonly maxWidth: string };
}

export interface CountParam extends Described {
  readonly kind: 'count';
  readonly default: number;
  readonly min: number;
  readonly max: number;
}

/** A plain number in one unit that is no length. As text it carries the unit. */
export interface QuantityParam extends Described {
  readonly kind: 'quantity';
  readonly unit: string;
  readonly default: number;
  readonly min: number;
  readonly max: number;
}

export interface ChoiceParam<O extends string = string> extends Described {
  readonly kind: 'choice';
  readonly options: readonly O[];
  readonly default: O;
}

export interface FlagParam extends Described {
  readonly kind: 'flag';
  readonly default: boolean;
}

/** One line of text. */
export interface TextParam extends Described {
  readonly kind: 'text';
  readonly default: string;
  readonly maxLength: number;
}

/** Everything a design may leave open: a closed union, read through tables by `Kind`. */
export type Param =
  | LengthParam
  | LengthsParam
  | DivisionParam
  | CountParam
  | QuantityParam
  | ChoiceParam
  | FlagParam
  | TextParam;

export type Kind = Param['kind'];

export type ParamOf<K extends Kind> = Extract<Param, { readonly kind: K }>;

/** What a parameter of any kind may hold once it is read. */
export type Value = number | string | boolean | readonly Mm[];

/** What a parameter holds once it is read. */
export type ValueOf<P extends Param> = P extends LengthParam
  ? Mm
  : P extends LengthsParam
    ? readonly Mm[]
    : P extends DivisionParam
      ? number | readonly Mm[]
      : P extends ChoiceParam<infer O>
        ? O
        : P extends CountParam | QuantityParam
          ? number
          : P extends FlagParam
            ? boolean
            : string;

/** What a design file may write for a parameter: numbers are mm where a length is due, text carries its unit. */
export type GivenOf<P extends Param> = P extends LengthParam
  ? Mm | string
  : P extends LengthsParam
    ? readonly (Mm | string)[] | string
    : P extends DivisionParam
      ? number | readonly (Mm | string)[] | string
      : P extends QuantityParam
        ? number | string
        : ValueOf<P>;
