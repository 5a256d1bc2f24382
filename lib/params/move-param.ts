import { brokenRules } from './broken-rules.ts';
import type { Param, Value } from './param.ts';
import { sampleOthers } from './sample-other.ts';
import type { Fields, PathOf, Spec, ValuesOf } from './spec.ts';
import { setPath, valueAt } from './values.ts';

/** The values with one parameter moved so that every rule still holds; undefined when it cannot move alone. */
export function moveParam<F extends Fields>(
  spec: Spec<F>,
  values: ValuesOf<F>,
  path: PathOf<F>,
): ValuesOf<F> | undefined {
  const param = spec.table.get(path);
  if (!param) throw new RangeError(`there is no parameter ${path}`);
  const others: readonly Value[] = sampleOthers<Param>(param, valueAt(values, path) as never);
  return others
    .map((other) => setPath(spec, values, path, other))
    .find((moved) => brokenRules(spec, moved).length === 0);
}
