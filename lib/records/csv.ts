/** A row of a table of readings. */
export interface CsvRow {
  /** Line of the file on which it starts, from 1. */
  readonly line: number;
  /** Without the blanks around them. */
  readonly cells: readonly string[];
}

/** Something in the text that is no row. */
export interface CsvFault {
  readonly line: number;
  readonly because: string;
}

/** A text of comma-separated values taken apart: nothing is judged yet but its quotes. */
export interface CsvText {
  /** The first row that is neither blank nor a remark. */
  readonly header?: CsvRow;
  /** The rows below it, without those that are broken. */
  readonly rows: readonly CsvRow[];
  /** Lines that start with `#`, without it: rows for the reader, or for us. */
  readonly remarks: readonly CsvRow[];
  readonly faults: readonly CsvFault[];
}

/**
 * Takes a table apart: fields between commas, in quotes where a field has commas or line ends in it, quotes inside doubled
 * (RFC 4180). A quote in the middle of a field is an inch mark. A byte order mark, CRLF, blank lines, and the empty fields
 * with which spreadsheets fill up a row do no harm.
 */
export function readCsv(text: string): CsvText {
  const faults: CsvFault[] = [];
  const all = rowsOf(text.replace(/^\uFEFF/, ''), faults).filter(({ cells }) => cells.some((cell) => cell !== ''));
  const isRemark = ({ cells }: CsvRow): boolean => cells[0]!.startsWith('#');
  const [header, ...rows] = all.filter((row) => !isRemark(row));
  const remarks = all.filter(isRemark).map(({ line, cells }) => ({
    line,
    cells: [cells.filter(Boolean).join(', ').slice(1).trim()],
  }));
  return { ...(header ? { header } : {}), rows, remarks, faults };
}

/** One field: `"in quotes"` or up to the next comma, and what ends it. */
const FIELD = /[ \t]*(?:"((?:[^"]|"")*)"[ \t]*|("(?:[^"]|"")*$)|([^,\r\n]*))(,|\r\n|\n|\r|$|(?=[\s\S]))/y;

function rowsOf(text: string, faults: CsvFault[]): CsvRow[] {
  const rows: CsvRow[] = [];
  let cells: string[] = [];
  let line = 1;
  let start = 1;
  FIELD.lastIndex = 0;
  for (;;) {
    const [whole, quoted, open, plain = '', end = ''] = FIELD.exec(text)!;
    if (open !== undefined) faults.push({ line: start, because: 'a quote is opened and never closed' });
    else if (quoted !== undefined && end === '' && FIELD.lastIndex < text.length) {
      faults.push({ line: start, because: 'there is more behind a closing quote; put a comma there' });
    }
    cells.push((quoted?.replaceAll('""', '"') ?? plain).trim());
    line += lineEnds(whole);
    if (end === ',' || (end === '' && FIELD.lastIndex < text.length)) continue;
    if (faults.at(-1)?.line !== start) rows.push({ line: start, cells });
    cells = [];
    start = line;
    if (FIELD.lastIndex >= text.length) return rows;
  }
}

const lineEnds = (text: string): number => text.match(/\r\n|\n|\r/g)?.length ?? 0;
