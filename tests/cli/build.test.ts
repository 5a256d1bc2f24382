import { existsSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { putBadDesigns } from './bad-designs.ts';
import { run } from './run-cli.ts';
import { contents, put, tempFolder } from './temp-folder.ts';

const folder = tempFolder();
putBadDesigns(path.join(folder, 'designs'));
const good = path.join(folder, 'designs/good');
const broken = path.join(folder, 'designs/syntax');

const STOOL = ['build', 'reading-stool'];

describe.concurrent('build', () => {
  test('tells what it made, steps on stderr and the sum on stdout', async () => {
    const out = path.join(folder, 'told');
    const { code, out: said, err } = await run([...STOOL, '--only', 'lists,stl', '--out', out]);
    expect(code, err).toBe(0);
    expect(said).toMatch(/^reading-stool: \d+ files, \d+ kB in \d+\.\d+ s\n/);
    expect(err).toMatch(/^ {2}checks +\d+\.\d+ s$/m);
    expect(err).toMatch(/^ {2}stl +\d+\.\d+ s$/m);
    expect(existsSync(path.join(out, 'reading-stool/cut-list.csv'))).toBe(true);
  });

  test('is silent when asked, and says the same in JSON', async () => {
    const out = path.join(folder, 'silent');
    const quiet = await run([...STOOL, '--only', 'lists', '--out', out, '--quiet']);
    expect(quiet).toEqual({ code: 0, out: '', err: '' });
    const { out: text, err } = await run([...STOOL, '--only', 'lists', '--out', out, '--json']);
    expect(err).toBe('');
    const { designs } = JSON.parse(text);
    expect(designs).toHaveLength(1);
    expect(designs[0]).toMatchObject({ design: 'reading-stool', written: true });
    for (const { path: file, bytes } of designs[0].files) {
      expect(statSync(path.join(out, 'reading-stool', file)).size).toBe(bytes);
    }
  });

  test('leaves nothing of the build before', async () => {
    const out = path.join(folder, 'replaced');
    await run([...STOOL, '--only', 'lists,findings', '--out', out, '--quiet']);
    expect(existsSync(path.join(out, 'reading-stool/findings.json'))).toBe(true);
    expect(readFileSync(path.join(out, 'reading-stool/findings.html'), 'utf8')).toContain('<h1>Reading-room stool');
    await run([...STOOL, '--only', 'lists', '--out', out, '--quiet']);
    expect(existsSync(path.join(out, 'reading-stool/findings.json'))).toBe(false);
    expect(contents(out).filter((line) => line.startsWith('.'))).toEqual([]);
  });

  test('takes values from a file, and an assignment before them', async () => {
    const out = path.join(folder, 'values');
    const file = put(folder, 'values.json', '{ "seat": { "length": "20 in", "width": "11 in" } }');
    const given = ['--params', file, '--set', 'seat.length=24 in', '--only', 'lists'];
    await run([...STOOL, ...given, '--out', out, '--quiet']);
    const { rows } = JSON.parse(readFileSync(path.join(out, 'reading-stool/cut-list.json'), 'utf8'));
    expect(rows.find((row: { name: string }) => row.name === 'seat').finished).toMatchObject({
      length: 609.6,
      width: 279.4,
    });
  });

  test('builds in spite of "change it" only by force, and says so', async () => {
    const thin = ['build', good, '--set', 'top.edgeThickness=12 mm', '--only', 'lists'];
    const out = path.join(folder, 'forced');
    const refused = await run([...thin, '--out', out]);
    expect(refused.code).toBe(1);
    expect(existsSync(out)).toBe(false);
    const forced = await run([...thin, '--out', out, '--force']);
    expect(forced.code).toBe(0);
    expect(forced.out).toContain('made in spite of "change it"; every paper says so');
    expect(forced.out).toMatch(/\d+ change it, .*; see check good\n$/);
    expect(readFileSync(path.join(out, 'good/cut-list.csv'), 'utf8')).toContain('made in spite of');
  });

  test('one design that fails does not stop the others, and the worst counts', async () => {
    const out = path.join(folder, 'several');
    const ended = await run(['build', broken, good, '--only', 'lists', '--out', out]);
    expect(ended.code).toBe(2);
    expect(ended.err).toContain('syntax/design.ts cannot be loaded');
    expect(ended.out).toMatch(/^good: 4 files/);
    expect(existsSync(path.join(out, 'good/cut-list.csv'))).toBe(true);
    expect(existsSync(path.join(out, 'syntax'))).toBe(false);
  });

  test('nor does a fault of ours', async () => {
    const out = path.join(folder, 'fault');
    const ours = path.join(folder, 'designs/ours');
    const ended = await run(['build', ours, good, '--only', 'lists', '--out', out]);
    expect(ended.code).toBe(70);
    expect(ended.err).toContain('a fault of tablewright');
    expect(ended.out).toMatch(/^good: 4 files/);
  });

  test('a misspelt design among several stops all of them', async () => {
    const out = path.join(folder, 'misspelt');
    const ended = await run(['build', good, 'reading-stol', '--out', out]);
    expect(ended.code).toBe(2);
    expect(ended.err).toContain('did you mean reading-stool?');
    expect(existsSync(out)).toBe(false);
  });

  test('two designs of one name do not write over each other', async () => {
    const twin = put(folder, 'twin/good.ts', readFileSync(path.join(good, 'design.ts'), 'utf8'));
    const ended = await run(['build', good, twin, '--out', path.join(folder, 'twins')]);
    expect(ended.code).toBe(2);
    expect(ended.err).toContain('would both be written to');
  });
});
