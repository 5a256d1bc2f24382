import { setImmediate as nextTurn } from 'node:timers/promises';
import { type Job, jobFiles } from 'tablewright';
import { type OutFolder, openOutFolder } from './out-folder.ts';
import type { TimedSteps } from './timed-steps.ts';
import { whenStopped } from './when-stopped.ts';

export interface WriteOptions {
  /** Of the design, and of its folder. */
  readonly name: string;
  /** The folder above those of the designs. */
  readonly out: string;
  readonly only: readonly string[] | undefined;
  readonly steps: TimedSteps;
}

/** In the order of its path. */
export interface WrittenFile {
  readonly path: string;
  readonly bytes: number;
}

/** Makes the files of a design and swaps them in; on any failure or interruption the old folder stays as it was. */
export async function writeBuild(job: Job, { name, out, only, steps }: WriteOptions): Promise<readonly WrittenFile[]> {
  const folder = openOutFolder(out, name);
  const stop = new AbortController();
  const release = whenStopped(() => {
    stop.abort();
    folder.discard();
  });
  try {
    const files = await jobFiles(job, { ...(only ? { only } : {}), onStep: steps.onStep, stop: stop.signal });
    await writeAll(folder, files);
    folder.swapIn();
    const sizes = [...files].map(([path, bytes]) => ({ path, bytes: bytes.length }));
    return sizes.toSorted((a, b) => (a.path < b.path ? -1 : 1));
  } finally {
    folder.discard();
    release();
  }
}

/** One file a turn, so that a signal finds its handler between them. */
async function writeAll(folder: OutFolder, files: ReadonlyMap<string, Uint8Array>): Promise<void> {
  for (const [path, bytes] of files) {
    folder.write(path, bytes);
    await nextTurn();
  }
}
