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

/** In a table: the product changes; it does not; the rules do not let the parameter move alone. */
const [MOVES, STAYS, STUCK] = ['x', '.', 'cannot move alone'];

/** The influences as a table to read: a row for each parameter, a column for each product. */
export function influenceTable(influence: Influence): string {
  const rows = [...influence].map(([path, products]) => [
    path,
    ...(products ? PRODUCTS.map((product) => (products.includes(product) ? MOVES : STAYS)) : [STUCK]),
  ]);
  const all = [['parameter', ...PRODUCTS], ...rows];
  const width = (k: number): number =>
    Math.max(...[...PRODUCTS.slice(k - 1, k), ...(k === 0 ? influence.keys() : [])].map((c) => c.length));
  return all
    .map(
      (row) =>
        `${row
          .map((cell, k) => cell.padEnd(width(k)))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}

/** Parameters that move nothing in any of the tables. */
export function deadOf(tables: readonly string[]): string[] {
  const rows = tables.flatMap((table) => table.trimEnd().split('\n').slice(1)).map((row) => row.split(/ {2,}/));
  const alive = new Set(rows.filter(([, ...cells]) => cells.includes(MOVES)).map(([path]) => path!));
  return [...new Set(rows.map(([path]) => path!))].filter((path) => !alive.has(path));
}
