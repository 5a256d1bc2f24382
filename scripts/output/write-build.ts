import { setImmediate as nextTurn } from 'node:timers/promises';
import { type Step as BuildStep, buildFiles } from 'tablewright';
import type { Request } from '../input/read-request.ts';
import { countVerdicts, type VerdictCounts } from '../report/findings-text.ts';
import { type OutFolder, openOutFolder } from './out-folder.ts';
import { whenStopped } from './when-stopped.ts';

export interface WriteOptions {
  /** The folder above those of the designs. */
  readonly out: string;
  readonly only: readonly string[] | undefined;
  /** Told when a step is done. */
  onStep(step: Step): void;
}

interface Step {
  readonly name: string;
  readonly seconds: number;
}

export interface Written {
  /** In the order of their paths. */
  readonly files: readonly { readonly path: string; readonly bytes: number }[];
  readonly steps: readonly Step[];
  readonly counts: VerdictCounts;
}

/** Makes the files of a design and swaps them in; on any failure or interruption the old folder stays as it was. */
export async function writeBuild({ ref, design, values, shop }: Request, options: WriteOptions): Promise<Written> {
  const folder = openOutFolder(options.out, ref.name);
  const stop = new AbortController();
  const release = whenStopped(() => {
    stop.abort();
    folder.discard();
  });
  const steps = stopwatch(options.onStep);
  try {
    const only = options.only ? { only: options.only } : {};
    const { job, files } = await buildFiles(design, values, { ...only, shop, onStep: steps.onStep, stop: stop.signal });
    await writeAll(folder, files);
    folder.swapIn();
    const sizes = [...files].map(([path, bytes]) => ({ path, bytes: bytes.length }));
    return {
      files: sizes.toSorted((a, b) => (a.path < b.path ? -1 : 1)),
      steps: steps.done,
      counts: countVerdicts(job.findings),
    };
  } finally {
    folder.discard();
    release();
  }
}

/** Times the steps of a build, and lets signals in between them. */
function stopwatch(tell: WriteOptions['onStep']) {
  const done: Step[] = [];
  let started = 0;
  const onStep = async ({ name, phase }: BuildStep): Promise<void> => {
    if (phase === 'end') {
      const step = { name, seconds: (performance.now() - started) / 1000 };
      done.push(step);
      tell(step);
    }
    await nextTurn();
    started = performance.now();
  };
  return { done, onStep };
}

/** One file a turn, so that a signal finds its handler between them. */
async function writeAll(folder: OutFolder, files: ReadonlyMap<string, Uint8Array>): Promise<void> {
  for (const [path, bytes] of files) {
    folder.write(path, bytes);
    await nextTurn();
  }
}
