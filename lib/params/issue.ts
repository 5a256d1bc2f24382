import type { Kind } from './param.ts';

/** What can be wrong with the input: a closed union. */
export type IssueCode =
  | 'not-an-assignment'
  | 'unknown'
  | 'unknown-group'
  | 'group-as-parameter'
  | 'parameter-as-group'
  | 'repeated'
  | 'wrong-type'
  | 'unreadable'
  | 'no-unit'
  | 'not-whole'
  | 'out-of-range'
  | 'wrong-size'
  | 'not-an-option'
  | 'text-too-long'
  | 'control-character'
  | 'rule'
  | 'not-a-range'
  | 'cannot-vary'
  | 'unknown-column'
  | 'missing-column'
  | 'broken-table'
  | 'no-fit';

/** Something is wrong with the input. Data only: the sentence is made in one place, by `renderIssue`. */
export interface Issue {
  readonly code: IssueCode;
  /** `top.length`; empty when the issue concerns no parameter. */
  readonly path: string;
  /** Text as it came; a number with the unit it is taken in; otherwise what it is (`null`, `a list`). */
  readonly given: string;
  /** Who gave it: `--set "top.length=3 mm"`, `the design file`, `the default`. */
  readonly from: string;
  /**
   * The unit of `min` and `max`. `mm` and `in`: lengths, held in mm, that the user wrote in that unit. `length`:
   * lengths, held in mm, the user wrote no unit. Anything else: plain numbers in that unit, empty for counts.
   */
  readonly unit: string;
  readonly kind?: Kind | undefined;
  /** Which entry of a list, counted from 1. */
  readonly item?: number | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly because?: string | undefined;
  /** A value as text that would be accepted. */
  readonly try?: string | undefined;
  /** How a value is given: by an option of the command line, a line in the file, or a row of a table; default `--set`. */
  readonly via?: '--set' | '--vary' | '--milled' | 'file' | 'table' | undefined;
  /** What it must be, in words, where no kind of parameter says it. */
  readonly expected?: string | undefined;
  readonly didYouMean?: string | undefined;
  /** What there is to choose from: options of a choice, names in a group, paths beside an unknown one. */
  readonly options?: readonly string[] | undefined;
}
