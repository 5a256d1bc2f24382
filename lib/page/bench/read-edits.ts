import { setOption } from '../../params/assignment.ts';
import { formatValue } from '../../params/format-value.ts';
import type { Param, Value } from '../../params/param.ts';
import { readParam } from '../../params/read-param.ts';
import { type Outcome, readSources } from '../../params/read-values.ts';
import type { Fields, ValuesOf } from '../../params/spec.ts';
import { valueAt } from '../../params/values.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Bench } from './bench.ts';
import type { Edits } from './edits.ts';

/** The values that edits make of a design, or all that is wrong: read as the command line reads `--set`, in its words. */
export function readEdits({ design, sources }: Bench, edits: Edits): Outcome<Fields> {
  const overrides = [...edits].map(([path, text]) => ({ path, text, from: setOption(path, text) }));
  return readSources(design.params, sources, overrides);
}

/** The edits, without one that gives what the design has anyway. */
export function withoutIdle(bench: Bench, edits: Edits, path: string, base: ValuesOf<Fields> | undefined): Edits {
  const text = edits.get(path);
  if (text === undefined || !base) return edits;
  const read = readParam(bench.design.params.table.get(path)!, text);
  if (read.faults || JSON.stringify(read.value) !== JSON.stringify(valueAt(base, path))) return edits;
  const next = new Map(edits);
  next.delete(path);
  return next;
}

/** A value of a parameter as one would type it. */
export const textOf = (param: Param, value: Value, units: UnitSystem): string =>
  formatValue<Param>(param, value as never, units);
