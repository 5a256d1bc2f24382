import meeting from '../../designs/meeting-table/design.ts';
import stool from '../../designs/reading-stool/design.ts';
import reading from '../../designs/reading-table/design.ts';
import study from '../../designs/study-table/design.ts';
import type { Design } from '../../lib/build/design.ts';
import { type Job, makeJob } from '../../lib/build/job.ts';
import { parseAssignment } from '../../lib/params/assignment.ts';
import { readValues } from '../../lib/params/read-values.ts';

export const DESIGNS = {
  'reading-table': reading as unknown as Design,
  'meeting-table': meeting as unknown as Design,
  'study-table': study as unknown as Design,
  'reading-stool': stool as unknown as Design,
} as const;

export type DesignName = keyof typeof DESIGNS;

export const NAMES = Object.keys(DESIGNS) as DesignName[];

const made = new Map<string, Job>();

/** A job with values set as on the command line; made once. */
function baseOf(name: DesignName, sets: readonly string[]): Job {
  const key = [name, ...sets].join(' ');
  const before = made.get(key);
  if (before) return before;
  const design = DESIGNS[name];
  const given = sets.map((one) => parseAssignment(one).override!);
  const { values, issues } = readValues(design.params, design.values, given);
  if (!values) throw new Error(JSON.stringify(issues));
  const job = makeJob(design, values);
  made.set(key, job);
  return job;
}

/**
 * The same with other words for its sheets. What is known of a job already is not computed again; findings take most of the
 * time and matter for the warning only.
 */
export function jobOf(
  name: DesignName,
  sets: readonly string[] = [],
  more: Partial<Design> = {},
  checked: 'checked' | 'unchecked' = 'unchecked',
): Job {
  const base = baseOf(name, sets);
  const job = checked === 'checked' ? { ...base } : uncheckedJob(base);
  return { ...job, design: { ...base.design, ...more } };
}

/** A job as if nothing had been found. */
export const uncheckedJob = ({ design, values, shop, records, assembly, nominal, shapes }: Job): Job => ({
  design,
  values,
  shop,
  records,
  assembly,
  nominal,
  shapes,
  findings: [],
  forced: [],
  cutList: [] as never,
  bill: [] as never,
});
