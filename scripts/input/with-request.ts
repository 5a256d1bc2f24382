import type { Call, Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import { exitOf } from '../report/problem.ts';
import { ComposeFailure } from './guard-compose.ts';
import { readInputs } from './inputs.ts';
import { type Request, readRequest } from './read-request.ts';
import { resolveDesign } from './resolve-designs.ts';

/** Runs a command that is about one design: finds and reads it, or tells everything that is wrong. */
export async function withRequest(
  { args, options, reporter }: Call,
  command: string,
  run: (request: Request) => Promise<Result>,
): Promise<Result> {
  const { designs, complaints } = resolveDesign(args, command);
  const inputs = readInputs(options);
  const [ref] = designs;
  if (!ref) {
    const problems = [...complaints, ...inputs.problems];
    reporter.problems(problems, '');
    return { exit: exitOf(problems), json: {} };
  }
  const { request, problems, units } = await readRequest(ref, inputs);
  if (!request) {
    reporter.problems(problems, '', options.units ?? units);
    return { exit: exitOf(problems), json: { design: ref.name } };
  }
  try {
    return await run(request);
  } catch (error) {
    if (!(error instanceof ComposeFailure)) throw error;
    reporter.problems([error.complaint], '');
    return { exit: EXIT.wrongUse, json: { design: ref.name } };
  }
}
