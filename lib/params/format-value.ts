import type { UnitSystem } from '../units/format-length.ts';
import { formatInches } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { parseLength } from '../units/parse-length.ts';
import type { Kind, Param, ParamOf, ValueOf } from './param.ts';

type Printer<P extends Param> = (value: ValueOf<P>, param: P, system: UnitSystem) => string;

const PRINTERS: { readonly [K in Kind]: Printer<ParamOf<K>> } = {
  length: (value, _, system) => formatExactly(value, system),
  lengths: (value, _, system) => formatList(value, system),
  division: (value, _, system) => (typeof value === 'number' ? `${value}` : formatList(value, system)),
  count: (value) => `${value}`,
  quantity: (value, { unit }) => `${value} ${unit}`.trim(),
  choice: (value) => value,
  flag: (value) => (value ? 'yes' : 'no'),
  text: (value) => value,
};

/** A value as text that reads back as exactly this value. */
export function formatValue<P extends Param>(param: P, value: ValueOf<P>, system: UnitSystem): string {
  return (PRINTERS[param.kind] as unknown as Printer<P>)(value, param, system);
}

/** The default as text, in the words of the spec. */
export function defaultText(param: Param): string {
  return 'written' in param ? param.written.default : formatValue(param, param.default, 'mm');
}

/** Inches where a 64th says it exactly, otherwise millimeters with all their digits. */
export function formatExactly(mm: Mm, system: UnitSystem): string {
  const inches = formatInches(mm);
  return system === 'in' && parseLength(inches) === mm ? inches : `${mm} mm`;
}

function formatList(list: readonly Mm[], system: UnitSystem): string {
  return list.map((mm) => formatExactly(mm, system)).join(', ');
}
