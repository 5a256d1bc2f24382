export interface Group {
  readonly code: number;
  readonly value: string;
}

/** A DXF text as its pairs of lines: the file format itself, before any meaning. */
export function dxfGroups(text: string): readonly Group[] {
  const lines = text.split('\r\n');
  if (lines.pop() !== '' || lines.length % 2 !== 0) throw new Error('a DXF file is pairs of lines, the last one ended');
  return Array.from({ length: lines.length / 2 }, (_, i) => ({ code: Number(lines[2 * i]), value: lines[2 * i + 1]! }));
}

/** The groups of each entity, table record or object: from one group 0 to the next. */
export function dxfRecords(text: string): readonly (readonly Group[])[] {
  const records: Group[][] = [];
  for (const group of dxfGroups(text)) {
    if (group.code === 0) records.push([]);
    records.at(-1)?.push(group);
  }
  return records;
}

/** The values of one group code in a record. */
export const values = (record: readonly Group[], code: number): readonly string[] =>
  record.filter((group) => group.code === code).map((group) => group.value);
