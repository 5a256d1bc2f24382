import type { Records } from '../model/records.ts';
import type { Fields, ValuesOf } from '../params/spec.ts';
import type { Shop } from '../shop/shop.ts';
import type { Assets } from './assets.ts';
import type { Design } from './design.ts';
import { type Job, makeJob } from './job.ts';
import type { Files, Output } from './output.ts';
import { OUTPUTS } from './outputs.ts';

/** What the build is doing; the caller holds the clock. */
export interface Step {
  readonly name: string;
  readonly phase: 'start' | 'end';
}

export interface BuildOptions {
  /** Names of outputs; default all. */
  readonly only?: readonly string[];
  /** Awaited, so that the caller can take a turn of the event loop and hear that it is to stop. */
  readonly onStep?: (step: Step) => void | Promise<void>;
  readonly stop?: AbortSignal;
  /** Machines, clamps and hands; default an invented small shop. */
  readonly shop?: Shop;
  /** What was measured; default nothing. */
  readonly records?: Records;
  /** Fonts and page scripts. An output that needs one that is not given is left out, or refused when asked for by name. */
  readonly assets?: Partial<Assets>;
}

export interface Build {
  readonly job: Job;
  readonly files: Files;
}

/**
 * Everything a design is turned into, as bytes by path. Nothing is written.
 *
 * @throws RangeError for a name in `only` that is unknown or lacks its assets, and from `compose`; the abort reason when stopped.
 */
export async function buildFiles<F extends Fields>(
  design: Design<F>,
  values: ValuesOf<F>,
  options: BuildOptions = {},
): Promise<Build> {
  checkNames(options.only);
  const step = stepper(options);
  const job = await step('assembly', () => makeJob(design, values, options.shop, options.records));
  await step('checks', () => job.findings);
  return { job, files: await jobFiles(job, options) };
}

/** The same of a job that is made already. @throws RangeError for a name in `only` that is unknown or lacks its assets; the abort reason when stopped. */
export async function jobFiles(job: Job, options: Omit<BuildOptions, 'shop' | 'records'> = {}): Promise<Files> {
  const { only, assets = {} } = options;
  checkNames(only);
  const files: Files = new Map();
  const step = stepper(options);
  for (const output of OUTPUTS) {
    if (!isWanted(output, only, assets)) continue;
    const made = await step(output.name, () => output.files(job, assets as Assets));
    for (const [path, bytes] of made) files.set(path, bytes);
  }
  return files;
}

/** @throws RangeError when it is asked for by name and what it needs is not given. */
function isWanted({ name, needs }: Output, only: readonly string[] | undefined, assets: Partial<Assets>): boolean {
  if (only && !only.includes(name)) return false;
  if (needs === undefined || assets[needs]) return true;
  if (only) throw new RangeError(`the output "${name}" needs ${needs}; give them as assets`);
  return false;
}

function checkNames(only: readonly string[] = []): void {
  const unknown = only.find((name) => !OUTPUTS.some((o) => o.name === name));
  if (unknown === undefined) return;
  throw new RangeError(`there is no output "${unknown}"; there are ${OUTPUTS.map((o) => o.name).join(', ')}`);
}

/** Runs a step between two calls of `onStep`. */
const stepper =
  ({ onStep = () => {}, stop }: Pick<BuildOptions, 'onStep' | 'stop'>) =>
  async <T>(name: string, run: () => T | Promise<T>): Promise<T> => {
    await onStep({ name, phase: 'start' });
    stop?.throwIfAborted();
    const value = await run();
    await onStep({ name, phase: 'end' });
    return value;
  };
