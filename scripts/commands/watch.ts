import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Call, type Command, ONE_DESIGN, type Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import type { DesignRef } from '../input/design-ref.ts';
import { SHOP_FILE } from '../input/load-shop.ts';
import { resolveDesign } from '../input/resolve-designs.ts';
import type { Options } from '../line/options.ts';
import { OUT_FOLDER } from '../output/out-folder.ts';
import { exitOf } from '../report/problem.ts';
import { rebuildLoop } from '../watch/rebuild-loop.ts';

const LIBRARY = fileURLToPath(new URL('../../lib', import.meta.url));

/** Builds a design again whenever it changes. */
export const watch: Command = {
  name: 'watch',
  summary: 'builds a design again whenever a file of it, of the shop or of the library changes',
  args: ONE_DESIGN,
  options: ['set', 'params', 'out', 'only', 'strict', 'force', 'quiet'],
  examples: ['watch reading-table', 'watch reading-table --only picture,findings --force'],
  run: watchDesign,
};

/** Ends with Ctrl-C alone; whatever is wrong with the design is told by each build. */
async function watchDesign({ args, options, reporter }: Call): Promise<Result> {
  const { unknownOutputs } = await import('../input/unknown-outputs.ts');
  const { designs, complaints } = resolveDesign(args, 'watch');
  const [ref] = designs;
  const wrong = [...complaints, ...unknownOutputs(options)];
  if (!ref || wrong.length > 0) {
    reporter.problems(wrong, 'nothing is watched');
    return { exit: exitOf(wrong), json: {} };
  }
  const stopping = new AbortController();
  process.on('SIGINT', () => stopping.abort());
  process.on('SIGTERM', () => stopping.abort());
  await rebuildLoop({
    watched: { places: places(ref, options), except: path.resolve(options.out ?? OUT_FOLDER) },
    args: buildArguments(ref, options),
    stop: stopping.signal,
    tell: reporter.progress,
  });
  return { exit: EXIT.stopped, json: {} };
}

/** A file that is not called design.ts may lie in any folder, so the folder is not looked at. */
function places({ file }: DesignRef, { params }: Options): string[] {
  const own = path.basename(file) === 'design.ts' ? path.dirname(file) : file;
  return [own, SHOP_FILE, LIBRARY, ...(params === undefined ? [] : [path.resolve(params)])];
}

/** The same options again, for the build. */
function buildArguments({ file }: DesignRef, options: Options): string[] {
  const { set, params, out, only, strict, force, quiet } = options;
  return [
    file,
    ...set.map((assignment) => `--set=${assignment}`),
    ...(params === undefined ? [] : [`--params=${params}`]),
    ...(out === undefined ? [] : [`--out=${out}`]),
    ...(only === undefined ? [] : [`--only=${only.join(',')}`]),
    ...(strict ? ['--strict'] : []),
    ...(force ? ['--force'] : []),
    ...(quiet ? ['--quiet'] : []),
  ];
}
