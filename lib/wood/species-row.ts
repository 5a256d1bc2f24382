import { type Sourced, type Status, sourced } from './sourced.ts';
import type { SpeciesField } from './species.ts';

/** Values of one species that stand in one row of one table: the source is written once, a wrong name does not compile. */
export function row<F extends SpeciesField>(
  status: Status,
  source: string,
  values: { readonly [K in F]: number },
  caution?: string,
): { readonly [K in F]: Sourced<number> } {
  const entries = Object.entries<number>(values).map(([field, value]) => [
    field,
    sourced(status, value, source, caution),
  ]);
  return Object.fromEntries(entries) as { readonly [K in F]: Sourced<number> };
}
