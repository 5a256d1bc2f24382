import type { Kind, Param, ParamOf } from './param.ts';
import { readLength } from './read-length.ts';
import { readDivision, readLengths } from './read-list.ts';
import { readCount, readQuantity } from './read-number.ts';
import { readChoice, readFlag, readText } from './read-word.ts';
import type { Reading } from './reading.ts';

const READERS: { readonly [K in Kind]: (param: ParamOf<K>, raw: unknown) => Reading } = {
  length: readLength,
  lengths: readLengths,
  division: readDivision,
  count: readCount,
  quantity: readQuantity,
  choice: readChoice,
  flag: readFlag,
  text: readText,
};

/** Reads whatever came for one parameter, by its own range only. Text reads the same wherever it comes from. */
export function readParam(param: Param, raw: unknown): Reading {
  return (READERS[param.kind] as (param: Param, raw: unknown) => Reading)(param, raw);
}
