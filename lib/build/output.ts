import type { AssetName, Assets } from './assets.ts';
import type { Job } from './job.ts';

/** Files by their path below the output folder of the design. */
export type Files = Map<string, Uint8Array>;

/** A kind of output that can be asked for by name. */
export interface Output {
  readonly name: string;
  readonly summary: string;
  /** What it cannot be made without. */
  readonly needs?: AssetName;
  /** Loads what it needs when it is asked: a check must not wait for the writers. */
  readonly files: (job: Job, assets: Assets) => Promise<Files>;
}

/** Text as the bytes of a file, UTF-8. */
export const textFile = (text: string): Uint8Array => new TextEncoder().encode(text);
