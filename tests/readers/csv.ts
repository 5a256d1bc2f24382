/**
 * A CSV file read by the grammar of RFC 4180, strictly: records end in CRLF, cells are parted by commas, a cell with a
 * comma, a quote or a line end stands in quotes, quotes inside it are doubled, all records have as many cells.
 */
export function readCsv(text: string): readonly (readonly string[])[] {
  const records: string[][] = [];
  let at = 0;
  while (at < text.length) {
    const cells: string[] = [];
    for (;;) {
      const cell = text[at] === '"' ? quoted(text, at) : plain(text, at);
      cells.push(cell.value);
      at = cell.end;
      if (text[at] !== ',') break;
      at += 1;
    }
    if (text.slice(at, at + 2) !== '\r\n') throw new Error(`record ${records.length + 1} does not end in CRLF`);
    at += 2;
    records.push(cells);
  }
  const wrong = records.findIndex((cells) => cells.length !== records[0]!.length);
  if (wrong >= 0) throw new Error(`record ${wrong + 1} has ${records[wrong]!.length} cells, not ${records[0]!.length}`);
  return records;
}

interface Cell {
  readonly value: string;
  /** Where the next character is. */
  readonly end: number;
}

function quoted(text: string, at: number): Cell {
  const match = /"((?:[^"]|"")*)"/y;
  match.lastIndex = at;
  const found = match.exec(text);
  if (!found) throw new Error(`the quote at ${at} is not closed`);
  return { value: found[1]!.replaceAll('""', '"'), end: match.lastIndex };
}

function plain(text: string, at: number): Cell {
  const match = /[^",\r\n]*/y;
  match.lastIndex = at;
  const value = match.exec(text)![0];
  return { value, end: match.lastIndex };
}

/** The records below the head, each cell by the name of its column; a name that comes twice is refused. */
export function csvRows(text: string): readonly Readonly<Record<string, string>>[] {
  const [head = [], ...rows] = readCsv(text);
  if (new Set(head).size !== head.length) throw new Error(`a column comes twice: ${head.join(', ')}`);
  return rows.map((cells) => Object.fromEntries(head.map((name, k) => [name, cells[k]!])));
}
