import { existsSync, readdirSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { nearMiss } from '../../lib/params/near-miss.ts';
import type { Complaint } from '../report/complaint.ts';

/** A design that is not loaded yet. */
export interface DesignRef {
  /** Names it on the command line, and its folder in the output. */
  readonly name: string;
  /** Absolute. */
  readonly file: string;
}

/** Where designs are looked for by name. */
export const DESIGNS_FOLDER = fileURLToPath(new URL('../../designs', import.meta.url));

const FILE = 'design.ts';

/** The folders that hold a `design.ts`, by name. */
export function findDesigns(folder = DESIGNS_FOLDER): readonly DesignRef[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .toSorted()
    .map((name) => ({ name, file: path.join(folder, name, FILE) }))
    .filter(({ file }) => isFile(file));
}

/** The design that a name or the path of a file means. */
export function designRef(given: string, known: readonly DesignRef[]): DesignRef | Complaint {
  const named = known.find(({ name }) => name === given);
  if (named) return named;
  const names = known.map(({ name }) => name);
  if (!/[\\/]|\.[cm]?[jt]s$/.test(given)) {
    const didYouMean = nearMiss(given, names);
    const assignment = given.includes('=') ? `--set "${given}"` : undefined;
    return { code: 'unknown-design', given, subject: '', options: names, didYouMean, try: assignment };
  }
  const at = path.resolve(given);
  const file = [at, path.join(at, FILE)].find(isFile);
  if (!file) {
    const because = existsSync(at) ? `there is no ${FILE} in that folder` : 'there is no such file';
    return { code: 'unknown-design', given, subject: '', because, options: names };
  }
  const real = realpathSync(file);
  return known.find((one) => realpathSync(one.file) === real) ?? { name: outsideName(file), file };
}

/** `my-bench/design.ts` and `my-bench.ts` are both "my-bench". */
function outsideName(file: string): string {
  const { name, dir } = path.parse(file);
  return name === 'design' ? path.basename(dir) || name : name;
}

/** False also for a path with a file in the middle. */
function isFile(file: string): boolean {
  try {
    return statSync(file).isFile();
  } catch {
    return false;
  }
}
