import type { Problem, Rule } from '../../params/rule.ts';
import type { PathOf } from '../../params/spec.ts';
import type { Mm } from '../../units/mm.ts';
import type { TrestleFields, TrestleValues } from './values.ts';

type Path = PathOf<TrestleFields>;

interface Limit {
  /** The field that is at fault, then the fields its limit depends on. */
  readonly fields: readonly [Path, ...Path[]];
  /** mm, or a plain number for a count; undefined when the rule does not concern this table. */
  readonly limit: (v: TrestleValues) => number | undefined;
  readonly because: string;
}

/** Limits that differ by less than this are the same, mm. */
const SAME: Mm = 1e-6;

const valueAt = (v: TrestleValues, path: Path): number => {
  const [group, name] = path.split('.') as [keyof TrestleValues, string];
  return (v[group] as unknown as Readonly<Record<string, number>>)[name]!;
};

/** The first field may be no more than the limit that the others leave. */
export const atMost = ({ fields, limit, because }: Limit): Rule<TrestleFields> => ({
  fields,
  check(v): Problem<Path> | undefined {
    const max = limit(v);
    return max !== undefined && valueAt(v, fields[0]) > max + SAME ? { path: fields[0], max, because } : undefined;
  },
});

/** The first field may be no less than the limit that the others leave. */
export const atLeast = ({ fields, limit, because }: Limit): Rule<TrestleFields> => ({
  fields,
  check(v): Problem<Path> | undefined {
    const min = limit(v);
    return min !== undefined && valueAt(v, fields[0]) < min - SAME ? { path: fields[0], min, because } : undefined;
  },
});
