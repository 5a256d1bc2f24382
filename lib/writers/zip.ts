import { zipSync, zlibSync } from 'fflate';

/** The earliest date that a zip archive can hold: archives of the same files are the same on any day. */
const FIRST_DAY = '1980-01-01T00:00:00';

/** Files by path, packed; the same bytes for the same files in the same order. */
export function zip(files: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const day = new Date(FIRST_DAY);
  return zipSync(Object.fromEntries(files), { level: 6, mtime: day });
}

/** A zlib stream (RFC 1950), as PNG wants it. */
export const deflate = (bytes: Uint8Array): Uint8Array => zlibSync(bytes, { level: 6 });
