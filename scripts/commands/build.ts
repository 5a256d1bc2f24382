import { ANY_DESIGNS, type Call, type Command, type Result } from '../command.ts';
import { worstExit } from '../exit.ts';
import { readInputs } from '../input/inputs.ts';
import { type Resolved, resolveDesigns } from '../input/resolve-designs.ts';
import type { Options } from '../line/options.ts';
import type { Complaint } from '../report/complaint.ts';
import { exitOf, type Problem } from '../report/problem.ts';

/** Everything a design is turned into, in its own folder. */
export const build: Command = {
  name: 'build',
  summary: 'checks designs and makes their files; every design when none is named',
  args: ANY_DESIGNS,
  options: ['set', 'params', 'out', 'only', 'strict', 'force', 'json', 'quiet'],
  examples: [
    'build',
    'build reading-table --only stl,dxf',
    'build reading-table --set "top.length=72 in" --out trial',
    'build ../shed/bench/design.ts',
  ],
  run: buildDesigns,
};

/** Wrong use stops all before anything is made; after that one design that fails does not stop the others. */
async function buildDesigns({ args, options, reporter }: Call): Promise<Result> {
  const { buildOne } = await import('../output/build-one.ts');
  const { unknownOutputs } = await import('../input/unknown-outputs.ts');
  const resolved = resolveDesigns(args);
  const inputs = readInputs(options);
  const wrong: Problem[] = [...resolved.complaints, ...unknownOutputs(options), ...forOneOnly(resolved, options)];
  // With a single design its own problems are told together with those of the inputs.
  if (wrong.length > 0 || (inputs.problems.length > 0 && resolved.designs.length !== 1)) {
    const problems = [...wrong, ...inputs.problems];
    reporter.problems(problems, 'nothing was written');
    return { exit: exitOf(problems), json: { designs: [] } };
  }
  const results: Result[] = [];
  for (const ref of resolved.designs) results.push(await buildOne(ref, inputs, options, reporter));
  if (results.length === 0) reporter.summary('there are no designs');
  return { exit: worstExit(results.map(({ exit }) => exit)), json: { designs: results.map(({ json }) => json) } };
}

/** Values are of one design's parameters. */
function forOneOnly({ designs }: Resolved, { set, params }: Options): Complaint[] {
  if (designs.length < 2) return [];
  const given = `for ${designs.map(({ name }) => name).join(', ')}`;
  const subjects = [...(set.length > 0 ? ['--set'] : []), ...(params === undefined ? [] : ['--params'])];
  return subjects.map((subject) => ({
    code: 'one-design-only',
    given,
    subject,
    try: `build ${designs[0]!.name} ${subject} …`,
  }));
}
