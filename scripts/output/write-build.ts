import { setImmediate as nextTurn } from 'node:timers/promises';
import { type Job, jobFiles, OUTPUTS } from 'tablewright';
import type { Assets } from '../../lib/build/assets.ts';
import { readFonts } from '../assets/fonts.ts';
import { bundleBench } from '../page/bench-bundle.ts';
import { bundleClient } from '../page/client-bundle.ts';
import { type OutFolder, openOutFolder } from './out-folder.ts';
import type { TimedSteps } from './timed-steps.ts';
import { whenStopped } from './when-stopped.ts';

export interface WriteOptions {
  /** Of the design, and of its folder. */
  readonly name: string;
  /** Path of the design file. */
  readonly file: string;
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
export async function writeBuild(
  job: Job,
  { name, file, out, only, steps }: WriteOptions,
): Promise<readonly WrittenFile[]> {
  const folder = openOutFolder(out, name);
  const stop = new AbortController();
  const release = whenStopped(() => {
    stop.abort();
    folder.discard();
  });
  try {
    const files = await jobFiles(job, {
      ...(only ? { only } : {}),
      assets: { fonts: readFonts(), ...(await pagesFor(file, only)) },
      onStep: steps.onStep,
      stop: stop.signal,
    });
    await writeAll(folder, files);
    folder.swapIn();
    const sizes = [...files].map(([path, bytes]) => ({ path, bytes: bytes.length }));
    return sizes.toSorted((a, b) => (a.path < b.path ? -1 : 1));
  } finally {
    folder.discard();
    release();
  }
}

/** Scripts of the pages, when a page is wanted: bundling takes longer than most outputs. */
async function pagesFor(file: string, only: readonly string[] | undefined): Promise<Partial<Assets>> {
  const wanted = OUTPUTS.some(({ name, needs }) => needs === 'pages' && (!only || only.includes(name)));
  if (!wanted) return {};
  const [client, bench] = await Promise.all([bundleClient(), bundleBench(file)]);
  return { pages: { client, bench } };
}

/** One file a turn, so that a signal finds its handler between them. */
async function writeAll(folder: OutFolder, files: ReadonlyMap<string, Uint8Array>): Promise<void> {
  for (const [path, bytes] of files) {
    folder.write(path, bytes);
    await nextTurn();
  }
}
