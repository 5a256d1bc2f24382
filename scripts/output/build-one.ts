import { existsSync } from 'node:fs';
import path from 'node:path';
import { drawTogether, type Finding, type Job, likeText, makeJob, noWoodWords, paperPlan } from 'tablewright';
import type { Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import type { DesignRef } from '../input/design-ref.ts';
import { ComposeFailure } from '../input/guard-compose.ts';
import type { Inputs } from '../input/inputs.ts';
import { type Request, readRequest } from '../input/read-request.ts';
import type { Options } from '../line/options.ts';
import { exitOf, type Problem } from '../report/problem.ts';
import { bugComplaint } from '../report/report-bug.ts';
import type { Reporter } from '../report/reporter.ts';
import { shownPath } from '../report/shown-path.ts';
import { blocking, countsText, countVerdicts, type VerdictCounts } from '../report/verdict-counts.ts';
import { OUT_FOLDER } from './out-folder.ts';
import { bytesText, counted, secondsText } from './sizes.ts';
import { type TimedSteps, timedSteps } from './timed-steps.ts';
import { whenStopped } from './when-stopped.ts';
import { type WrittenFile, writeBuild } from './write-build.ts';
import { writeProblem } from './write-problem.ts';

/** Checks one design and makes its folder, telling how it goes. */
export async function buildOne(ref: DesignRef, inputs: Inputs, options: Options, reporter: Reporter): Promise<Result> {
  const out = options.out ?? OUT_FOLDER;
  const folder = path.resolve(out, ref.name);
  const fail = (problems: readonly Problem[], units?: 'in' | 'mm'): Result => {
    const kept = existsSync(folder) ? `${shownPath(folder)} is as it was` : `for ${ref.name}`;
    reporter.problems(problems, `nothing was written${existsSync(folder) ? '; ' : ' '}${kept}`, units);
    return { exit: exitOf(problems), json: { design: ref.name, written: false } };
  };
  const { request, problems, units } = await readRequest(ref, inputs);
  if (!request) return fail(problems, units);
  try {
    const made = await buildRequest(request, out, options, reporter);
    if ('code' in made) return fail([made]);
    return { exit: EXIT.good, json: { design: ref.name, written: true, folder: shownPath(folder), ...made } };
  } catch (error) {
    if (error instanceof ComposeFailure) return fail([error.complaint]);
    return fail([writeProblem(error, folder) ?? bugComplaint(error)]);
  }
}

/** The files that were written, or why the checks let none be written. */
async function buildRequest(
  { ref, design, values, shop, records }: Request,
  out: string,
  { only, strict, force }: Options,
  reporter: Reporter,
) {
  const start = performance.now();
  reporter.progress(`${ref.name}: ${design.title}, revision ${design.revision}`);
  const steps = timedSteps(({ name, seconds }) =>
    reporter.progress(`  ${name.padEnd(STEP_WIDTH)} ${secondsText(seconds).padStart(7)}`),
  );
  const job = await checkedJob({ design, values, shop, records }, steps);
  const blocked = force ? undefined : blockedBy(ref.name, job.findings, strict);
  if (blocked) return blocked;
  const files = await writeBuild(job, { name: ref.name, file: ref.file, out, only, steps });
  const counts = countVerdicts(job.findings);
  const noWood = await noWoodTold(job, files);
  for (const words of noWood) reporter.progress(`  note: ${words}; see lumber ${ref.name}`);
  reporter.summary(summaryOf(ref.name, files, counts, (performance.now() - start) / 1000));
  const told = noWood.length > 0 ? { noWood } : {};
  return { files, steps: steps.done, counts, ...told, ...(job.forced.length > 0 ? { forced: job.forced } : {}) };
}

/** What the boards at hand do not give; of papers that plan them. */
async function noWoodTold(job: Job, files: readonly WrittenFile[]): Promise<readonly string[]> {
  if (!job.records.boards || !files.some((file) => file.path.startsWith('lumber/'))) return [];
  return noWoodWords(await paperPlan(job));
}

/** Nothing is written yet, so there is nothing to tidy up when it is stopped. */
/** What a job is made of. */
type Piece = Pick<Request, 'design' | 'values' | 'shop' | 'records'>;

async function checkedJob({ design, values, shop, records }: Piece, steps: TimedSteps): Promise<Job> {
  const release = whenStopped(() => {});
  try {
    const job = await steps.run('assembly', () => makeJob(design, values, shop, records));
    await steps.run('checks', () => job.findings);
    return job;
  } finally {
    release();
  }
}

const STEP_WIDTH = 10;

function summaryOf(name: string, files: readonly WrittenFile[], counts: VerdictCounts, seconds: number): string {
  const bytes = sum(files.map((file) => file.bytes));
  const made = `${name}: ${counted(files.length, 'file')}, ${bytesText(bytes)} in ${secondsText(seconds)}`;
  const spite = counts['change it'] > 0 ? '\n  made in spite of "change it"; every paper says so' : '';
  const rest = counts.ok === sum(Object.values(counts)) ? '' : `\n  ${countsText(counts)}; see check ${name}`;
  return `${made}${spite}${rest}`;
}

function blockedBy(name: string, findings: readonly Finding[], strict: boolean): Problem | undefined {
  const found = blocking(findings, strict);
  if (found.length === 0) return undefined;
  const because = drawTogether(found).map(likeText).join('\n');
  const given = `${counted(found.length, 'finding')} "change it"${strict ? ' or "look again"' : ''}`;
  const advice = `check ${name} for what would mend it, or --force to build all the same`;
  return { code: 'blocked', given, subject: name, because, try: advice };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
