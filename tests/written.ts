import meetingTable from '../designs/meeting-table/design.ts';
import readingStool from '../designs/reading-stool/design.ts';
import readingTable from '../designs/reading-table/design.ts';
import studyTable from '../designs/study-table/design.ts';
import type { Assets } from '../lib/build/assets.ts';
import type { Design } from '../lib/build/design.ts';
import { type Job, makeJob } from '../lib/build/job.ts';
import { OUTPUTS } from '../lib/build/outputs.ts';
import { readValues } from '../lib/params/read-values.ts';
import { renderIssues } from '../lib/params/render-issue.ts';
import type { Fields, ValuesOf } from '../lib/params/spec.ts';
import { readFonts } from '../scripts/assets/fonts.ts';

// biome-ignore lint/suspicious/noExplicitAny: designs of any parameters stand in one table
type AnyDesign = Design<any>;

/** The designs of the repository, by the name of their folder. */
export const DESIGNS = {
  'reading-table': readingTable,
  'meeting-table': meetingTable,
  'study-table': studyTable,
  'reading-stool': readingStool,
} as const satisfies Record<string, AnyDesign>;

export type DesignName = keyof typeof DESIGNS;
export const DESIGN_NAMES = Object.keys(DESIGNS) as readonly DesignName[];

/** Parameters by path, as one would type them: `{ 'top.showEdge': 'square' }`. */
export type Changes = Readonly<Record<string, string>>;

/** The values of a design with some of them changed. @throws Error with the complaints. */
export function valuesOf(design: AnyDesign, changes: Changes = {}): ValuesOf<Fields> {
  const overrides = Object.entries(changes).map(([path, text]) => ({ path, text, from: 'the test' }));
  const { values, issues } = readValues(design.params, design.values, overrides);
  if (issues) throw new Error(renderIssues(issues, design.units));
  return values as ValuesOf<Fields>;
}

/** A design put together, with what is derived from it. */
export const jobOf = (name: DesignName, changes: Changes = {}): Job => {
  const design: AnyDesign = DESIGNS[name];
  return makeJob(design, valuesOf(design, changes));
};

/** What a build would write, read by path below the folder of the design. */
export interface Written {
  readonly job: Job;
  readonly paths: readonly string[];
  bytes(path: string): Uint8Array;
  text(path: string): string;
  // biome-ignore lint/suspicious/noExplicitAny: a JSON file, read without the help of the library's types
  json(path: string): any;
}

/** The same job with nothing found. */
const unchecked = (job: Job): Job => Object.create(job, { findings: { value: [] }, forced: { value: [] } }) as Job;

const made = new Map<string, Promise<Written>>();

/**
 * What a build writes for a design: all outputs that need no fonts or page scripts, or some, each design once in a test file. Without the output of
 * the findings no check is run, and papers carry no warning.
 */
export function written(name: DesignName, changes: Changes = {}, only?: readonly string[]): Promise<Written> {
  const key = JSON.stringify([name, changes, only]);
  const known = made.get(key) ?? write(name, changes, only);
  made.set(key, known);
  return known;
}

async function write(name: DesignName, changes: Changes, only?: readonly string[]): Promise<Written> {
  const whole = jobOf(name, changes);
  const job = !only || only.includes('findings') ? whole : unchecked(whole);
  const files = new Map<string, Uint8Array>();
  for (const output of OUTPUTS) {
    if (only ? !only.includes(output.name) : output.needs) continue;
    for (const [path, content] of await output.files(job, { fonts: readFonts() } as Assets)) files.set(path, content);
  }
  const bytes = (path: string): Uint8Array => {
    const found = files.get(path);
    if (!found) throw new Error(`the build of ${name} wrote no ${path}; it wrote ${[...files.keys()].join(', ')}`);
    return found;
  };
  const text = (path: string): string => new TextDecoder('utf-8', { fatal: true }).decode(bytes(path));
  return { job, paths: [...files.keys()], bytes, text, json: (path) => JSON.parse(text(path)) };
}
