import { setOption } from '../../params/assignment.ts';
import type { Spec } from '../../params/spec.ts';
import type { Bench } from './bench.ts';
import type { Edits } from './edits.ts';

/** The edits as options of the command line, in the order of the parameter table. */
export function asOptions({ table }: Spec, edits: Edits): string {
  return [...table.keys()]
    .filter((path) => edits.has(path))
    .map((path) => setOption(path, edits.get(path)!))
    .join(' ');
}

type Nested = { [name: string]: Nested | unknown };

/** The values of the design with the edits in their places, nested as a design file and `--params` have them. */
export function asValues({ sources }: Bench, edits: Edits): object {
  const values: Nested = {};
  for (const source of sources) merge(values, source.values as Nested);
  for (const [path, text] of edits) {
    const names = path.split('.');
    const last = names.pop()!;
    let at = values;
    for (const name of names) {
      if (!isRecord(at[name])) at[name] = {};
      at = at[name] as Nested;
    }
    at[last] = text;
  }
  return values;
}

function merge(into: Nested, from: Nested): void {
  for (const [name, value] of Object.entries(from)) {
    if (!isRecord(value)) into[name] = value;
    else {
      if (!isRecord(into[name])) into[name] = {};
      merge(into[name] as Nested, value as Nested);
    }
  }
}

const isRecord = (value: unknown): boolean => Object.prototype.toString.call(value) === '[object Object]';
