import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { run, start } from '../cli/run-cli.ts';
import { put, tempFolder } from '../cli/temp-folder.ts';

const folder = tempFolder();
const out = path.join(folder, 'out');

const DESIGN = `import { defineDesign, trestleParams, trestleTable } from 'tablewright';
export default defineDesign({ title: 'Desk', revision: 'A', date: '2026-01-02', units: 'in', params: trestleParams,
  values: {}, compose: trestleTable });\n`;

/** A grid of readings of one thickness on the ridge and one at the edge. */
const readings = (ridge: string, edge: string): string =>
  [
    '# date: 2026-02-03',
    'along,across,thickness',
    ...['10 in', '40 in', '70 in'].flatMap((along) =>
      ['0 in', '-15 in', '15 in'].map((across) => `${along},${across},${across === '0 in' ? ridge : edge}`),
    ),
  ].join('\n');

describe('tables beside a design', () => {
  test('bad rows stop every command with exit 2, all told, nothing written', async () => {
    const file = put(folder, 'bad/design.ts', DESIGN);
    put(folder, 'bad/stations.csv', 'along,across,thicknes\n1,2,3\n');
    put(folder, 'bad/boards.csv', 'mark,thickness\n1,2\n');
    const commands = [
      ['build', file, '--out', out],
      ['check', file],
      ['lists', file],
    ];
    const ended = await Promise.all(commands.map((args) => run(args)));
    for (const { code, err } of ended) {
      expect(code, err).toBe(2);
      expect(err).toMatch(/the date is missing[\s\S]*there is no column "thicknes"\n +did you mean thickness\?/);
      expect(err).toContain('bad/stations.csv');
      expect(err).toContain('bad/boards.csv');
    }
    expect(existsSync(out)).toBe(false);
  });

  test('a table that is no UTF-8', async () => {
    const file = put(folder, 'latin/design.ts', DESIGN);
    writeFileSync(path.join(folder, 'latin/stations.csv'), Uint8Array.of(0x23, 0xe9, 0x0a));
    const { code, err } = await run(['check', file]);
    expect([code, err]).toEqual([2, expect.stringMatching(/cannot be read\n +it is not UTF-8/)]);
  });

  test('the demo shows its readings', async () => {
    const { out: said } = await run(['check', 'meeting-table', '--all']);
    expect(said).toMatch(/high spots: line \d+, .* below the plane of its half/);
    expect(said).toContain('the underside was measured on 2026-12-09');
  });
});

test('a file of another name has tables of its own name, and watch looks at them', async () => {
  const file = put(folder, 'shed/desk.ts', DESIGN);
  put(folder, 'shed/stations.csv', 'not of this design');
  const table = put(folder, 'shed/desk.stations.csv', readings('2 1/4 in', '1 3/8 in'));
  const watch = start(['watch', file, '--only', 'model', '--force', '--out', out]);
  let heard = '';
  watch.child.stderr!.on('data', (more) => {
    heard += more;
  });
  const hears = async (text: string): Promise<void> => {
    while (!heard.includes(text)) {
      if (watch.child.exitCode !== null) throw new Error(heard);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    heard = '';
  };
  const ridge = (): number =>
    JSON.parse(readFileSync(path.join(out, 'desk/model.json'), 'utf8')).measured.planes[0].plane.c;
  await hears('waiting for a change');
  expect(ridge()).toBeCloseTo(57.15, 6);
  writeFileSync(table, readings('2 3/16 in', '1 3/8 in'));
  await hears('waiting for a change');
  expect(ridge()).toBeCloseTo(55.5625, 6);
  watch.child.kill('SIGINT');
  expect((await watch.ended).code).toBe(130);
});
