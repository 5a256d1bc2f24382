import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type Running, start } from './run-cli.ts';
import { put, tempFolder } from './temp-folder.ts';

const folder = tempFolder();
const out = path.join(folder, 'out');

const design = (title: string): string =>
  `import { defineDesign, trestleParams, trestleTable } from 'tablewright';
export default defineDesign({ title: '${title}', revision: 'A', date: '2026-01-02', units: 'in', params: trestleParams,
  values: {}, compose: trestleTable });\n`;

/** Answers what was said on stderr since the last time, once a text has come. */
function listener({ child, ended }: Running): (text: string) => Promise<string> {
  let heard = '';
  child.stderr!.on('data', (more) => {
    heard += more;
  });
  let over = false;
  void ended.then(() => {
    over = true;
  });
  return async (text) => {
    while (!heard.includes(text)) {
      if (over) throw new Error(`ended before it said ${text}: ${heard}`);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    const said = heard;
    heard = '';
    return said;
  };
}

test('watch builds after each change with what the file now says, outlives an error, and ends with Ctrl-C', async () => {
  const file = put(folder, 'desk/design.ts', design('First'));
  const watch = start(['watch', file, '--only', 'lists', '--out', out]);
  const hears = listener(watch);
  const title = (): string => JSON.parse(readFileSync(path.join(out, 'desk/cut-list.json'), 'utf8')).title;
  await hears('waiting for a change');
  expect(title()).toBe('First');
  writeFileSync(file, design('Second'));
  await hears('waiting for a change');
  expect(title()).toBe('Second');
  writeFileSync(file, 'export default {\n');
  expect(await hears('waiting for it to be mended')).toContain('desk/design.ts cannot be loaded');
  expect(title()).toBe('Second');
  writeFileSync(file, design('Third'));
  await hears('waiting for a change');
  expect(title()).toBe('Third');
  watch.child.kill('SIGINT');
  expect((await watch.ended).code).toBe(130);
  expect(existsSync(path.join(out, 'desk/cut-list.csv'))).toBe(true);
});
