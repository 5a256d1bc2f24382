export interface TextColumn {
  /** May have several lines; the last ones stand side by side. */
  readonly head: string;
  readonly align?: 'left' | 'right';
}

/** A table for a terminal: columns as wide as their widest cell, two spaces between, no lines but one under the head. */
export function tableText(columns: readonly TextColumn[], rows: readonly (readonly string[])[]): string {
  const heads = columns.map((c) => c.head.split('\n'));
  const tall = Math.max(0, ...heads.map((head) => head.length));
  const widths = heads.map((head, k) => Math.max(...[...head, ...rows.map((r) => r[k] ?? '')].map((t) => t.length)));
  const line = (cells: readonly string[]): string =>
    columns
      .map((c, k) =>
        c.align === 'right' ? (cells[k] ?? '').padStart(widths[k]!) : (cells[k] ?? '').padEnd(widths[k]!),
      )
      .join('  ')
      .trimEnd();
  const headLine = (n: number): string => line(heads.map((head) => head[n - tall + head.length] ?? ''));
  return [
    ...Array.from({ length: tall }, (_, n) => headLine(n)),
    widths.map((w) => '-'.repeat(w)).join('  '),
    ...rows.map(line),
  ].join('\n');
}
