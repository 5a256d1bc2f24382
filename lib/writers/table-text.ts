export interface TextColumn {
  readonly head: string;
  readonly align?: 'left' | 'right';
}

/** A table for a terminal: columns as wide as their widest cell, two spaces between, no lines but one under the head. */
export function tableText(columns: readonly TextColumn[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map((c, k) => Math.max(c.head.length, ...rows.map((r) => (r[k] ?? '').length)));
  const line = (cells: readonly string[]): string =>
    columns
      .map((c, k) =>
        c.align === 'right' ? (cells[k] ?? '').padStart(widths[k]!) : (cells[k] ?? '').padEnd(widths[k]!),
      )
      .join('  ')
      .trimEnd();
  return [line(columns.map((c) => c.head)), widths.map((w) => '-'.repeat(w)).join('  '), ...rows.map(line)].join('\n');
}
