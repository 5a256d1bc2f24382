import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Call, type Command, ONE_DESIGN, type Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import type { DesignRef } from '../input/design-ref.ts';
import { SHOP_FILE } from '../input/load-shop.ts';
import { recordFiles } from '../input/record-texts.ts';
import { resolveDesign } from '../input/resolve-designs.ts';
import type { Options } from '../line/options.ts';
import { OUT_FOLDER } from '../output/out-folder.ts';
import type { Complaint } from '../report/complaint.ts';
import { exitOf } from '../report/problem.ts';
import { makeLivePage } from '../watch/make-live-page.ts';
import { type PageServer, servePage } from '../watch/page-server.ts';
import { readPort } from '../watch/read-port.ts';
import { rebuildLoop } from '../watch/rebuild-loop.ts';

const LIBRARY = fileURLToPath(new URL('../../lib', import.meta.url));

/** Builds a design again whenever it changes, and serves its live page. */
export const watch: Command = {
  name: 'watch',
  summary: 'builds a design again whenever a file of it, of the shop or of the library changes; serves its live page',
  args: ONE_DESIGN,
  options: ['set', 'params', 'out', 'only', 'port', 'strict', 'force', 'quiet'],
  examples: ['watch reading-table', 'watch reading-table --only picture,findings --force --port 8123'],
  run: watchDesign,
};

/** Ends with Ctrl-C alone; whatever is wrong with the design is told by each build. */
async function watchDesign({ args, options, reporter }: Call): Promise<Result> {
  const { unknownOutputs } = await import('../input/unknown-outputs.ts');
  const { designs, complaints } = resolveDesign(args, 'watch');
  const [ref] = designs;
  const port = readPort(options.port);
  const wrong = [...complaints, ...unknownOutputs(options), ...(typeof port === 'number' ? [] : [port])];
  if (!ref || typeof port !== 'number' || wrong.length > 0) {
    reporter.problems(wrong, 'nothing is watched');
    return { exit: exitOf(wrong), json: {} };
  }
  const server = await serveOrSay(port);
  if ('code' in server) {
    reporter.problems([server], 'nothing is watched');
    return { exit: exitOf([server]), json: {} };
  }
  reporter.result(`live at ${server.address}`);
  const stopping = new AbortController();
  process.on('SIGINT', () => stopping.abort());
  process.on('SIGTERM', () => stopping.abort());
  await rebuildLoop({
    watched: { places: places(ref, options), except: path.resolve(options.out ?? OUT_FOLDER) },
    args: buildArguments(ref, options),
    stop: stopping.signal,
    onBuild: pageMaker(ref, options, server),
    tell: reporter.progress,
  });
  server.close();
  return { exit: EXIT.stopped, json: {} };
}

async function serveOrSay(port: number): Promise<PageServer | Complaint> {
  try {
    return await servePage(port);
  } catch (error) {
    const because = error instanceof Error ? error.message : String(error);
    return {
      code: 'port-taken',
      given: `port ${port}`,
      subject: '',
      because,
      try: '--port with another number, or none',
    };
  }
}

/** Makes the live page anew each time; of pages that are made at once only the last is shown. */
function pageMaker(ref: DesignRef, options: Options, server: PageServer): () => void {
  let latest = 0;
  return () => {
    latest += 1;
    const mine = latest;
    void makeLivePage(ref, options).then(({ page, why }) => {
      if (mine !== latest) return;
      if (page) server.show(page);
      else server.broken(why);
    });
  };
}

/** A file that is not called design.ts may lie in any folder, so the folder is not looked at. */
function places({ file }: DesignRef, { params }: Options): string[] {
  const own = path.basename(file) === 'design.ts' ? path.dirname(file) : file;
  return [
    own,
    ...Object.values(recordFiles(file)),
    SHOP_FILE,
    LIBRARY,
    ...(params === undefined ? [] : [path.resolve(params)]),
  ];
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
