import { existsSync } from 'node:fs';
import path from 'node:path';
import type { Finding } from 'tablewright';
import { makeJob } from 'tablewright';
import type { Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import type { DesignRef } from '../input/design-ref.ts';
import { ComposeFailure } from '../input/guard-compose.ts';
import type { Inputs } from '../input/inputs.ts';
import { type Request, readRequest } from '../input/read-request.ts';
import type { Options } from '../line/options.ts';
import { blocking, countsText, oneLine } from '../report/findings-text.ts';
import { drawTogether } from '../report/like-findings.ts';
import { exitOf, type Problem } from '../report/problem.ts';
import { bugComplaint } from '../report/report-bug.ts';
import type { Reporter } from '../report/reporter.ts';
import { shownPath } from '../report/shown-path.ts';
import { OUT_FOLDER } from './out-folder.ts';
import { bytesText, counted, secondsText } from './sizes.ts';
import { type Written, writeBuild } from './write-build.ts';
import { writeProblem } from './write-problem.ts';

/** Checks one design and makes its folder, telling how it goes. */
export async function buildOne(ref: DesignRef, inputs: Inputs, options: Options, reporter: Reporter): Promise<Result> {
  const start = performance.now();
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
    const blocked = blockedBy(request, options);
    if (blocked) return fail([blocked]);
    reporter.progress(`${ref.name}: ${request.design.title}, revision ${request.design.revision}`);
    const onStep: Parameters<typeof writeBuild>[1]['onStep'] = ({ name, seconds }) =>
      reporter.progress(`  ${name.padEnd(STEP_WIDTH)} ${secondsText(seconds).padStart(7)}`);
    const written = await writeBuild(request, { out, only: options.only, onStep });
    reporter.summary(summaryOf(ref.name, written, (performance.now() - start) / 1000));
    return { exit: EXIT.good, json: { design: ref.name, written: true, folder: shownPath(folder), ...written } };
  } catch (error) {
    if (error instanceof ComposeFailure) return fail([error.complaint]);
    return fail([writeProblem(error, folder) ?? bugComplaint(error)]);
  }
}

const STEP_WIDTH = 10;

function summaryOf(name: string, { files, counts }: Written, seconds: number): string {
  const bytes = sum(files.map((file) => file.bytes));
  const made = `${name}: ${counted(files.length, 'file')}, ${bytesText(bytes)} in ${secondsText(seconds)}`;
  return counts.ok === sum(Object.values(counts)) ? made : `${made}\n  ${countsText(counts)}; see check ${name}`;
}

function blockedBy({ ref, design, values, shop }: Request, { strict, force }: Options): Problem | undefined {
  if (force) return undefined;
  const found = blocking(makeJob(design, values, shop).findings, strict);
  if (found.length === 0) return undefined;
  const because = drawTogether(found).map(oneLine).join('\n');
  const advice = `check ${ref.name} for what would mend it, or --force to build all the same`;
  return { code: 'blocked', given: blockedText(found, strict), subject: ref.name, because, try: advice };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

function blockedText(found: readonly Finding[], strict: boolean): string {
  return `${counted(found.length, 'finding')} "change it"${strict ? ' or "look again"' : ''}`;
}
