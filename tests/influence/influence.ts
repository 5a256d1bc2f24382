import { moveParam } from '../../lib/params/move-param.ts';
import { json } from '../../lib/writers/json.ts';
import { type Changes, valuesOf } from '../written.ts';
import type { AnyDesign } from './any-design.ts';
import { PRODUCTS, type Product, productsOf } from './products.ts';

/** Which products change when a parameter is moved; undefined when the rules do not let it move alone. */
export type Influence = ReadonlyMap<string, readonly Product[] | undefined>;

/** Moves every parameter of a design, or those of `paths`, one at a time within its range, and compares all that is made. */
export function influenceOf(design: AnyDesign, changes: Changes = {}, paths?: readonly string[]): Influence {
  const values = valuesOf(design, changes);
  const assembly = design.compose(values, design.title);
  const before = productsOf(design, values, assembly);
  return new Map(
    (paths ?? [...design.params.table.keys()]).map((path) => {
      const moved = moveParam(design.params, values, path);
      if (!moved) return [path, undefined];
      const other = design.compose(moved, design.title);
      if (json(other) === before.assembly) return [path, []];
      const after = productsOf(design, moved, other);
      return [path, PRODUCTS.filter((product) => after[product] !== before[product])];
    }),
  );
}

/** The capital of a name. */
const initial = (name: string): string => /[A-Z]/.exec(name)?.[0] ?? name;

/** Parameters that move nothing in any of the designs. */
export const deadOf = (influences: readonly Influence[]): string[] =>
  [...new Set(influences.flatMap((influence) => [...influence.keys()]))].filter((path) =>
    influences.every((influence) => (influence.get(path) ?? []).length === 0),
  );

/**
 * The influences as a table to read: a row for each parameter, a column for each product, and in it the capitals of the
 * designs in which it changes; under "stuck" those that do not let it move alone.
 */
export function influenceTable(named: Readonly<Record<string, Influence>>): string {
  const designs = Object.entries(named);
  const paths = [...new Set(designs.flatMap(([, influence]) => [...influence.keys()]))];
  const initials = (has: (influence: Influence) => boolean): string =>
    designs.map(([name, influence]) => (has(influence) ? initial(name) : '')).join('') || '.';
  const rows = paths.map((path) => [
    path,
    ...PRODUCTS.map((product) => initials((influence) => influence.get(path)?.includes(product) ?? false)),
    initials((influence) => influence.has(path) && influence.get(path) === undefined),
  ]);
  const all = [['parameter', ...PRODUCTS, 'stuck'], ...rows];
  const widths = all[0]!.map((_, k) => Math.max(...all.map((row) => row[k]!.length)));
  return all
    .map(
      (row) =>
        `${row
          .map((cell, k) => cell.padEnd(widths[k]!))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}
