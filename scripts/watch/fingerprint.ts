import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';

/** Changes whenever a file below one of the places is changed, added or removed. Hidden files do not count. */
export function fingerprint(places: readonly string[]): string {
  return places.flatMap(stamps).join('\n');
}

function stamps(at: string): string[] {
  const stat = statSync(at, { throwIfNoEntry: false });
  if (!stat) return [`${at} is gone`];
  if (!stat.isDirectory()) return [`${at} ${stat.ino} ${stat.size} ${stat.mtimeMs}`];
  return entries(at).flatMap((name) => stamps(path.join(at, name)));
}

/** Empty for a folder that went away since. */
function entries(folder: string): string[] {
  try {
    return readdirSync(folder).filter((name) => !name.startsWith('.') && name !== 'node_modules');
  } catch {
    return [];
  }
}
