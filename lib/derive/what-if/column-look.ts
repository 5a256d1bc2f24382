import { beyond } from '../../model/compare-findings.ts';
import { type NumberLook, numberLook } from '../../model/finding-number.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Column } from './columns.ts';

/** How the numbers of a column are printed. */
export const lookOf = ({ unit, cells }: Column, units: UnitSystem): NumberLook =>
  numberLook(
    unit,
    cells.flatMap((cell) => cell?.limit ?? []),
    units,
  );

/** `up to 6 mm`, `from 1/4 in`; empty when the limit is not the same throughout. */
export function limitText(column: Column, units: UnitSystem): string {
  const { limit, direction } = column;
  if (limit === undefined) return '';
  const word = { 'at most': 'up to', 'at least': 'from' }[direction ?? 'at most'];
  return `${direction === undefined ? 'limit' : word} ${lookOf(column, units).say(limit)}`;
}

/** Whether a verdict or a printed number differs between two trials that have one. */
export function changes({ cells, ...column }: Column, units: UnitSystem): boolean {
  const { say } = lookOf({ cells, ...column }, units);
  const texts = cells.flatMap((cell) =>
    cell ? [`${cell.verdict} ${cell.value === undefined ? '' : say(cell.value)}`] : [],
  );
  return new Set(texts).size > 1;
}

/**
 * Columns that change: those first in which not everything is ok, in the order of the checks; then the others, by how near
 * they come to their limits.
 */
export function changingColumns(columns: readonly Column[], units: UnitSystem): readonly Column[] {
  const shown = columns.filter((column) => changes(column, units));
  const well = shown.filter(isWell(true)).map((column) => ({ column, near: nearest(column) }));
  return [...shown.filter(isWell(false)), ...well.sort((a, b) => b.near - a.near).map(({ column }) => column)];
}

const nearest = ({ cells, direction }: Column): number =>
  Math.max(FAR, ...cells.map((cell) => (cell ? beyond(cell, direction) : FAR)));

/** So that two without a limit can be compared. */
const FAR = -1e9;

/** Whether a column is ok in all trials, or is not. */
export const isWell =
  (well: boolean) =>
  ({ cells }: Column): boolean =>
    cells.every((cell) => cell === undefined || cell.verdict === 'ok') === well;

/** The name of the check; with its limit where the check has several columns. */
export function columnName(column: Column, all: readonly Column[], units: UnitSystem): string {
  const alone = all.filter(({ check }) => check === column.check).length === 1;
  return alone ? column.check : `${column.check} (${limitText(column, units)})`;
}

/** `slot cover 13/32 to 13/16 in`: the least and the greatest number of a column. */
export function rangeText(column: Column, all: readonly Column[], units: UnitSystem): string {
  const name = columnName(column, all, units);
  const values = column.cells.flatMap((cell) => cell?.value ?? []);
  if (values.length === 0) return name;
  const { say, bare } = lookOf(column, units);
  return `${name} ${bare(Math.min(...values))} to ${say(Math.max(...values))}`;
}
