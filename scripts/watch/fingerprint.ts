import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';

/** Where to look. */
export interface Watched {
  /** Files and folders. */
  readonly places: readonly string[];
  /** A folder to leave out, also where it lies inside one of the places. */
  readonly except: string;
}

/** Changes whenever a file in one of the places is changed, added or removed. Hidden files do not count. */
export function fingerprint({ places, except }: Watched): string {
  return places.flatMap((place) => stamps(place, except)).join('\n');
}

function stamps(at: string, except: string): string[] {
  if (at === except) return [];
  const stat = statSync(at, { throwIfNoEntry: false });
  if (!stat) return [`${at} is gone`];
  if (!stat.isDirectory()) return [`${at} ${stat.ino} ${stat.size} ${stat.mtimeMs}`];
  return entries(at).flatMap((name) => stamps(path.join(at, name), except));
}

/** Empty for a folder that went away since. */
function entries(folder: string): string[] {
  try {
    return readdirSync(folder).filter((name) => !name.startsWith('.') && name !== 'node_modules');
  } catch {
    return [];
  }
}
