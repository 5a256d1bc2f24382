import { readdirSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { ROOT, type Running, run, start } from './run-cli.ts';
import { contents, put, tempFolder } from './temp-folder.ts';

const folder = tempFolder();
const BUILD = ['build', 'reading-table', '--only', 'model,lists,stl', '--out'];

/** Stands for a build in the middle of writing; ends only when it is stopped. */
const HALF_WRITTEN = put(
  folder,
  'half-written.ts',
  `import { openOutFolder } from '${ROOT}scripts/output/out-folder.ts';
import { whenStopped } from '${ROOT}scripts/output/when-stopped.ts';
const [out, name] = process.argv.slice(2);
const folder = openOutFolder(out, name);
whenStopped(folder.discard);
folder.write('solids/half.stl', new Uint8Array(3));
process.stdout.write('writing\\n');
setInterval(() => {}, 1000);
`,
);

/** Waits for a text on a stream of a running process. */
function hears({ child, ended }: Running, stream: 'stdout' | 'stderr', text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    let heard = '';
    child[stream]!.on('data', (more) => {
      heard += more;
      if (heard.includes(text)) resolve();
    });
    void ended.then(({ err }) => reject(new Error(`ended before it said ${text}: ${err}`)));
  });
}

const partials = (out: string): readonly string[] => readdirSync(out).filter((name) => name.startsWith('.'));

/** A finished folder for each test. */
const finished = ['calculating', 'killed', 'writing', 'dead'].map((name) => path.join(folder, name));

beforeAll(async () => {
  const built = await Promise.all(finished.map((out) => run([...BUILD, out, '--quiet'])));
  expect(built.map(({ code }) => code)).toEqual([0, 0, 0, 0]);
});

describe.concurrent('an interrupted build', () => {
  test('Ctrl-C while it calculates', async () => {
    const out = finished[0]!;
    const before = contents(out);
    const build = start([...BUILD, out, '--set', 'top.length=72 in']);
    await hears(build, 'stderr', 'assembly');
    build.child.kill('SIGINT');
    expect((await build.ended).code).toBe(130);
    expect(contents(out)).toEqual(before);
  });

  test('killed while it calculates', async () => {
    const out = finished[1]!;
    const before = contents(out);
    const build = start([...BUILD, out, '--set', 'top.length=72 in']);
    await hears(build, 'stderr', 'assembly');
    build.child.kill('SIGKILL');
    expect((await build.ended).code).toBe(null);
    expect(contents(out)).toEqual(before);
  });

  test('Ctrl-C while it writes', async () => {
    const out = finished[2]!;
    const before = contents(out);
    const build = start([out, 'reading-table'], HALF_WRITTEN);
    await hears(build, 'stdout', 'writing');
    expect(partials(out)).toEqual([`.reading-table.${build.child.pid}.partial`]);
    build.child.kill('SIGINT');
    expect((await build.ended).code).toBe(130);
    expect(contents(out)).toEqual(before);
  });

  test('killed while it writes: the old folder is whole, and the next build tidies up', async () => {
    const out = finished[3]!;
    const before = contents(path.join(out, 'reading-table'));
    const build = start([out, 'reading-table'], HALF_WRITTEN);
    await hears(build, 'stdout', 'writing');
    build.child.kill('SIGKILL');
    await build.ended;
    expect(partials(out)).toHaveLength(1);
    expect(contents(path.join(out, 'reading-table'))).toEqual(before);
    const next = await run([...BUILD, out]);
    expect(next.code).toBe(0);
    expect(partials(out)).toEqual([]);
    expect(contents(path.join(out, 'reading-table'))).toEqual(before);
  });
});
