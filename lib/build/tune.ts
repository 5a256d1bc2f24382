import type { CheckContext, Tune } from '../derive/checks/check.ts';
import type { Assembly } from '../model/assembly.ts';
import { brokenRules } from '../params/broken-rules.ts';
import { formatValue } from '../params/format-value.ts';
import type { Param } from '../params/param.ts';
import type { Fields, Spec, ValuesOf } from '../params/spec.ts';
import { setPath, valueAt } from '../params/values.ts';
import type { UnitSystem } from '../units/format-length.ts';

/** Steps in which a maker changes a size: 1/16 in, 1 mm (common practice, no source). */
const STEP: { readonly [U in UnitSystem]: number } = { in: 25.4 / 16, mm: 1 };

type Movable = Extract<Param, { readonly kind: 'length' | 'quantity' | 'count' }>;

/** The parameters of a design as checks may move them, one at a time. */
export function tuneOf<F extends Fields>(
  spec: Spec<F>,
  values: ValuesOf<F>,
  units: UnitSystem,
  compose: (values: ValuesOf<F>) => Assembly,
  context: Omit<CheckContext, 'assembly' | 'tune'>,
): Tune {
  const movable = (path: string): Movable | undefined => {
    const param = spec.table.get(path);
    return param?.kind === 'length' || param?.kind === 'quantity' || param?.kind === 'count' ? param : undefined;
  };
  const need = (path: string): Movable => {
    const param = movable(path);
    if (!param) throw new RangeError(`${path} is no parameter that can be moved`);
    return param;
  };
  const moved = (path: string, value: number): CheckContext | undefined => {
    const changed = setPath(spec, values, path, value);
    if (brokenRules(spec, changed).length > 0) return undefined;
    try {
      return { ...context, assembly: compose(changed) };
    } catch (error) {
      // Values that pass all rules and still cannot be put together are no fix.
      if (error instanceof RangeError) return undefined;
      throw error;
    }
  };
  // Several findings turn to the same lever, and each starts with its first step.
  const made = new Map<string, { readonly context: CheckContext | undefined }>();
  return {
    value: (path) => (movable(path) ? (valueAt(values, path) as number) : undefined),
    limits: (path) => need(path),
    moved(path, value) {
      const key = `${path}=${value}`;
      const known = made.get(key) ?? { context: moved(path, value) };
      made.set(key, known);
      return known.context;
    },
    say: (path, value) => `${path} ${formatValue<Movable>(need(path), value as never, units)}`,
    step: (path) => (need(path).kind === 'length' ? STEP[units] : need(path).kind === 'count' ? 1 : 0.5),
  };
}
