import type { Issue } from '../params/issue.ts';
import { nearMiss } from '../params/near-miss.ts';
import type { CsvRow } from './csv.ts';
import { inTable } from './table-issue.ts';

/** Columns that a table may have; `C` are their names. */
export interface ColumnSpec<C extends string> {
  readonly all: readonly C[];
  readonly needed: readonly C[];
  /** Columns that say one thing in several ways, one of which is needed, and that in words; whoever reads the table asks for them. */
  readonly either: { readonly names: readonly C[]; readonly words: string };
  /** Why a name that one might expect is not there, and what does instead. */
  readonly instead?: Readonly<Record<string, string>>;
}

/** Which cell of a row holds what; a column that is not there is undefined. */
export type ColumnPlaces<C extends string> = ReadonlyMap<C, number>;

export interface ColumnsRead<C extends string> {
  readonly places: ColumnPlaces<C>;
  /** Columns that misspelled names are near to: they are told as unknown, not as missing. */
  readonly meant: ReadonlySet<string>;
  readonly issues: readonly Issue[];
}

/** Reads the names of the columns, whatever their order: all that are unknown, doubled or missing at once. */
export function readColumns<C extends string>(header: CsvRow, spec: ColumnSpec<C>, from: string): ColumnsRead<C> {
  const places = new Map<C, number>();
  const issues: Issue[] = [];
  const meant = new Set<string>();
  const at = `line ${header.line}`;
  header.cells.forEach((cell, k) => {
    if (cell === '') return;
    const name = spec.all.find((one) => one === cell.toLowerCase());
    if (name === undefined) {
      issues.push(unknownColumn(cell, spec, from, places));
      meant.add(nearMiss(cell, spec.all) ?? '');
    } else if (places.has(name)) {
      issues.push(
        inTable(`${at}, ${name}`, from, { code: 'repeated', given: `columns ${places.get(name)! + 1} and ${k + 1}` }),
      );
    } else {
      places.set(name, k);
    }
  });
  // Nothing can be told of columns that are not parted.
  if (header.cells.some((cell) => otherSeparator(cell))) for (const name of spec.all) meant.add(name);
  const missing = spec.needed.filter((name) => !places.has(name) && !meant.has(name));
  issues.push(...missing.map((name) => inTable(name, from, { code: 'missing-column', because: headOf(spec) })));
  return { places, meant, issues };
}

function unknownColumn<C extends string>(
  given: string,
  spec: ColumnSpec<C>,
  from: string,
  places: ColumnPlaces<C>,
): Issue {
  const because = Object.hasOwn(spec.instead ?? {}, given.toLowerCase())
    ? spec.instead![given.toLowerCase()]
    : otherSeparator(given);
  const options = spec.all.filter((name) => !places.has(name));
  const didYouMean = because ? undefined : nearMiss(given, options);
  return inTable(given, from, { code: 'unknown-column', given, because, didYouMean, options: spec.all });
}

const otherSeparator = (given: string): string | undefined =>
  /[;\t]/.test(given) ? 'columns are parted by commas' : undefined;

const headOf = <C extends string>({ all, needed, either }: ColumnSpec<C>): string => {
  const rest = all.filter((name) => !needed.includes(name) && !either.names.includes(name));
  return `the first row names the columns: ${needed.join(', ')}, and ${either.words}; there may be ${rest.join(', ')}`;
};
