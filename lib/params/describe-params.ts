import { formatNumber, type UnitSystem } from '../units/format-length.ts';
import { defaultText, formatValue } from './format-value.ts';
import type { Kind, Param, ParamOf } from './param.ts';
import type { Fields, Spec, ValuesOf } from './spec.ts';
import { valueAt } from './values.ts';

/** One row of the table of parameters: text only, the limits in the words of the spec. */
export interface ParamRow {
  readonly path: string;
  /** Labels of the groups around it, outermost first. */
  readonly groups: readonly string[];
  readonly label: string;
  readonly kind: Kind;
  /** What a number is written in: `in or mm`, `%`; empty when there is none. */
  readonly unit: string;
  readonly default: string;
  /** The value, when values were handed in. */
  readonly value: string | undefined;
  readonly min: string;
  readonly max: string;
  /** What else holds for the entries of a list. */
  readonly entries: string;
  readonly options: readonly string[];
  readonly help: string;
  readonly because: string;
}

type Extent = Pick<ParamRow, 'unit' | 'min' | 'max' | 'entries' | 'options'>;

const NONE: Extent = { unit: '', min: '', max: '', entries: '', options: [] };
const LENGTH = 'in or mm';

const EXTENTS: { readonly [K in Kind]: (param: ParamOf<K>) => Extent } = {
  length: ({ written }) => ({ ...NONE, unit: LENGTH, min: written.min, max: written.max }),
  lengths: ({ written, minItems, maxItems }) => ({
    ...NONE,
    unit: LENGTH,
    min: written.min,
    max: written.max,
    entries: `${minItems} to ${maxItems} of them`,
  }),
  division: ({ written }) => ({
    ...NONE,
    min: written.min,
    max: written.max,
    entries: `or widths, each ${written.minWidth} to ${written.maxWidth}`,
  }),
  count: ({ min, max }) => ({ ...NONE, min: `${min}`, max: `${max}` }),
  quantity: ({ unit, min, max }) => ({ ...NONE, unit, min: withUnit(min, unit), max: withUnit(max, unit) }),
  choice: ({ options }) => ({ ...NONE, options }),
  flag: () => ({ ...NONE, options: ['yes', 'no'] }),
  text: ({ maxLength }) => ({ ...NONE, max: `${maxLength} characters` }),
};

/** The table of parameters, for the command line, the documentation and the fields of a page. */
export function describeParams<F extends Fields>(
  spec: Spec<F>,
  values?: ValuesOf<F>,
  system: UnitSystem = 'in',
): readonly ParamRow[] {
  return [...spec.table].map(([path, param]) => ({
    path,
    groups: groupLabels(spec.fields, path),
    label: param.label,
    kind: param.kind,
    ...(EXTENTS[param.kind] as (param: Param) => Extent)(param),
    default: defaultText(param),
    value: values && formatValue<Param>(param, valueAt(values, path) as never, system),
    help: param.help,
    because: param.because,
  }));
}

function groupLabels(fields: Fields, path: string): readonly string[] {
  const [name = '', ...rest] = path.split('.');
  const node = fields[name];
  return node?.kind === 'group' ? [node.label, ...groupLabels(node.fields, rest.join('.'))] : [];
}

const withUnit = (value: number, unit: string): string => `${formatNumber(value, 6)} ${unit}`.trim();
