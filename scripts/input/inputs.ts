import type { Source } from 'tablewright';
import { type Override, parseAssignment } from '../../lib/params/assignment.ts';
import type { Options } from '../line/options.ts';
import type { Problem } from '../report/problem.ts';
import { readParamsFile } from './params-file.ts';

/** What the command line says of parameters, for any design. */
export interface Inputs {
  readonly file: Source | undefined;
  readonly overrides: readonly Override[];
  /** Boards that came out of milling otherwise, unread: they are judged by the table of boards. */
  readonly milled: readonly string[];
  readonly problems: readonly Problem[];
  /** The file could not be read: values would be judged without it, wrongly. */
  readonly incomplete: boolean;
}

type Given = Pick<Options, 'params' | 'set'> & Partial<Pick<Options, 'milled'>>;

export function readInputs({ params, set, milled = [] }: Given): Inputs {
  const file = params === undefined ? undefined : readParamsFile(params);
  const read = set.map((argument) => parseAssignment(argument));
  const broken = file !== undefined && 'code' in file;
  return {
    file: broken ? undefined : (file as Source | undefined),
    overrides: read.flatMap(({ override }) => (override ? [override] : [])),
    milled,
    problems: [...(broken ? [file] : []), ...read.flatMap(({ issue }) => (issue ? [issue] : []))],
    incomplete: broken,
  };
}
