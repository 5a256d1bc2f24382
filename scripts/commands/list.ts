import { type Call, type Command, NO_ARGUMENTS, type Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import { type DesignRef, findDesigns } from '../input/design-ref.ts';
import { ComposeFailure } from '../input/guard-compose.ts';
import { readInputs } from '../input/inputs.ts';
import { readRequest } from '../input/read-request.ts';
import { exitOf, type Problem } from '../report/problem.ts';

/** The designs there are. */
export const list: Command = {
  name: 'list',
  summary: 'the designs, with title, revision and overall size',
  args: NO_ARGUMENTS,
  options: ['units', 'json', 'quiet'],
  examples: ['list', 'list --units mm'],
  run: listDesigns,
};

interface Row {
  readonly design: string;
  readonly title: string;
  readonly revision: string;
  readonly units: 'in' | 'mm';
  /** mm over all. */
  readonly overall: { readonly length: number; readonly width: number; readonly height: number };
}

const COLUMNS = [
  { head: 'design' },
  { head: 'title' },
  { head: 'rev' },
  { head: 'length', align: 'right' },
  { head: 'width', align: 'right' },
  { head: 'height', align: 'right' },
] as const;

/** A design that is broken does not hide the others. */
async function listDesigns({ options, reporter }: Call): Promise<Result> {
  const rows: Row[] = [];
  const problems: Problem[] = [];
  for (const ref of findDesigns()) {
    const found = await rowOf(ref);
    if ('design' in found) rows.push(found);
    else problems.push(...found.problems);
  }
  const { formatLength, tableText } = await import('tablewright');
  const cells = rows.map(({ design, title, revision, units, overall }) => {
    const sizes = [overall.length, overall.width, overall.height];
    return [design, title, revision, ...sizes.map((mm) => formatLength(mm, options.units ?? units, 'nearest', 16))];
  });
  reporter.result(rows.length > 0 ? tableText(COLUMNS, cells) : 'there are no designs');
  reporter.problems(problems, '');
  return { exit: problems.length > 0 ? exitOf(problems) : EXIT.good, json: { designs: rows } };
}

async function rowOf(ref: DesignRef): Promise<Row | { readonly problems: readonly Problem[] }> {
  const { request, problems } = await readRequest(ref, readInputs({ params: undefined, set: [] }));
  if (!request) return { problems };
  const { design, values, shop, records } = request;
  const { derivedNumbers, makeJob } = await import('tablewright');
  try {
    const { overall } = derivedNumbers(makeJob(design, values, shop, records));
    return { design: ref.name, title: design.title, revision: design.revision, units: design.units, overall };
  } catch (error) {
    if (error instanceof ComposeFailure) return { problems: [error.complaint] };
    throw error;
  }
}
