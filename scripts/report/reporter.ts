import type { UnitSystem } from 'tablewright';
import type { Exit } from '../exit.ts';
import { type Paint, paintFor } from './paint.ts';
import { closing, type Problem, renderProblem } from './problem.ts';

/** The version of the JSON documents: goes up when a field changes its meaning or goes away. */
const SCHEMA = 1;

/** Where a command says something. Under `--json` all of it is silent but the one document at the end. */
export interface Reporter {
  /** What was asked for, on stdout. */
  result(text: string): void;
  /** A closing line on stdout, silent under `--quiet`. */
  summary(text: string): void;
  /** On stderr, silent under `--quiet`. */
  progress(text: string): void;
  /** On stderr, with a last line that says how it ended: `2 problems; nothing was written`. */
  problems(found: readonly Problem[], ending: string, units?: UnitSystem): void;
  /** Ends a command: under `--json` prints its document, problems included. */
  done(command: string, exit: Exit, payload: object): void;
  /** Colors for stdout. */
  readonly paint: Paint;
}

interface Modes {
  readonly json: boolean;
  readonly quiet: boolean;
}

export function reporterFor({ json, quiet }: Modes): Reporter {
  const collected: object[] = [];
  const out = (text: string): unknown => process.stdout.write(`${text}\n`);
  const err = (text: string): unknown => process.stderr.write(`${text}\n`);
  const silent = (): void => {};
  const paint = paintFor(process.stderr);
  return {
    paint: paintFor(process.stdout),
    result: json ? silent : out,
    summary: json || quiet ? silent : out,
    progress: json || quiet ? silent : err,
    problems(found, ending, units = 'in') {
      if (found.length === 0) return;
      const texts = found.map((problem) => renderProblem(problem, units));
      collected.push(...found.map((problem, k) => ({ ...problem, text: texts[k] })));
      if (json) return;
      const painted = texts.map((text) => text.replace(/^error:/, paint('red', 'error:')));
      err([...painted, closing(found, ending)].filter(Boolean).join('\n\n'));
    },
    done(command, exit, payload) {
      if (json) out(JSON.stringify({ schema: SCHEMA, command, exit, problems: collected, ...payload }, null, 2));
    },
  };
}
