import type { Param, Value } from './param.ts';
import type { Fields, PathOf, Spec, ValuesOf } from './spec.ts';

type Nested = { readonly [name: string]: Value | Nested };

/** Every parameter by its path, in the order in which a table shows them. */
export function tableOf(fields: Fields, prefix = ''): ReadonlyMap<string, Param> {
  const table = new Map<string, Param>();
  for (const [name, node] of Object.entries(fields)) {
    const path = prefix + name;
    if (node.kind !== 'group') table.set(path, node);
    else for (const [inner, param] of tableOf(node.fields, `${path}.`)) table.set(inner, param);
  }
  return table;
}

/** The frozen nested record of values that stand under their paths. */
export function nestValues<F extends Fields>(fields: F, byPath: ReadonlyMap<string, Value>): ValuesOf<F> {
  return nest(fields, byPath, '') as unknown as ValuesOf<F>;
}

/** Path to value, in the order of the table. */
export function flattenValues<F extends Fields>(spec: Spec<F>, values: ValuesOf<F>): Map<PathOf<F>, Value> {
  return new Map([...spec.table.keys()].map((path) => [path as PathOf<F>, valueAt(values, path)]));
}

/** The value under a path of the spec these values belong to. */
export function valueAt(values: object, path: string): Value {
  let at: unknown = values;
  for (const name of path.split('.')) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, name)) {
      throw new RangeError(`there is no value at ${path}`);
    }
    at = (at as Record<string, unknown>)[name];
  }
  return at as Value;
}

/** A frozen copy with one value replaced. The new value is not checked. */
export function setPath<F extends Fields>(spec: Spec<F>, values: ValuesOf<F>, path: string, value: Value): ValuesOf<F> {
  if (!spec.table.has(path)) throw new RangeError(`there is no parameter ${path}`);
  return nestValues(spec.fields, new Map([...flattenValues(spec, values), [path, value]]));
}

function nest(fields: Fields, byPath: ReadonlyMap<string, Value>, prefix: string): Nested {
  const entries = Object.entries(fields).map(([name, node]) => {
    const path = prefix + name;
    return [name, node.kind === 'group' ? nest(node.fields, byPath, `${path}.`) : byPath.get(path)!] as const;
  });
  return Object.freeze(Object.fromEntries(entries));
}
