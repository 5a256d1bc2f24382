import type { Mm } from '../units/mm.ts';
import { parseLength } from '../units/parse-length.ts';
import { memory, read, type Sourced } from './sourced.ts';

/** Quarters of an inch, as rough hardwood is sold. */
export type ThicknessClassId = '4/4' | '5/4' | '6/4' | '7/4' | '8/4' | '10/4' | '12/4' | '16/4';

export interface ThicknessClass {
  readonly id: ThicknessClassId;
  /** Rough thickness, by which it is paid. */
  readonly nominal: Mm;
  /** What is left when both faces are surfaced. */
  readonly dressed: Sourced<Mm>;
}

const SOURCE = 'Hardwood lumber dimensions, Engineering ToolBox: surfaced two sides';

const row = (id: ThicknessClassId, dressed: Sourced<Mm>): ThicknessClass => ({
  id,
  nominal: parseLength(`${id} in`),
  dressed,
});

/** The classes, thinnest first; a shop may hand in its own. */
export const THICKNESS_CLASSES: readonly ThicknessClass[] = [
  row('4/4', read(parseLength('13/16 in'), SOURCE)),
  row('5/4', read(parseLength('1 1/16 in'), SOURCE, 'a dealer gives 1 to 1 1/16 in')),
  row('6/4', read(parseLength('1 5/16 in'), SOURCE, 'a dealer gives 1 1/4 to 1 5/16 in')),
  row('7/4', read(parseLength('1 1/2 in'), SOURCE)),
  row('8/4', read(parseLength('1 3/4 in'), SOURCE)),
  row('10/4', memory(parseLength('2 1/4 in'), 'common practice')),
  row('12/4', read(parseLength('2 3/4 in'), SOURCE)),
  row('16/4', read(parseLength('3 3/4 in'), SOURCE)),
];
