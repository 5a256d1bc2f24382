import path from 'node:path';

/** A path as one would type it: relative inside the current folder, absolute elsewhere. */
export function shownPath(file: string): string {
  const relative = path.relative(process.cwd(), file);
  return relative.startsWith('..') || path.isAbsolute(relative) ? file : relative || '.';
}
