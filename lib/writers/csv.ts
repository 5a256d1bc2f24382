const NEEDS_QUOTES = /[",\r\n]/;

/** Comma-separated values by RFC 4180: CRLF, quotes where a cell needs them, the header first. */
export function csv(header: readonly string[], rows: readonly (readonly string[])[]): string {
  return [header, ...rows].map((cells) => `${cells.map(cell).join(',')}\r\n`).join('');
}

const cell = (text: string): string => (NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
