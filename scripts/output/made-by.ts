import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** Lists the files of a build, in its folder: what else is found there is somebody's own. */
export const MADE_BY = '.made-by-build';

const HEAD = 'This folder is replaced as a whole by every build; keep your own files elsewhere. Made here:';

export const madeBy = (files: readonly string[]): string => `${[HEAD, ...files.toSorted()].join('\n')}\n`;

/** Files in a finished folder that neither its own build made nor the new one makes. */
export function strangersIn(folder: string, made: Iterable<string>): readonly string[] {
  if (!existsSync(folder)) return [];
  const list = path.join(folder, MADE_BY);
  const before = existsSync(list) ? readFileSync(list, 'utf8').split('\n').slice(1) : [];
  const ours = new Set([MADE_BY, ...before, ...made]);
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
    .filter((file) => !ours.has(file));
}
