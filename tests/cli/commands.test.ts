import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { COMMANDS } from '../../scripts/commands.ts';
import { findDesigns } from '../../scripts/input/design-ref.ts';
import { commandHelp, generalHelp } from '../../scripts/report/help-text.ts';
import { run } from './run-cli.ts';
import { put, tempFolder } from './temp-folder.ts';

const folder = tempFolder();

/** Something deserves another look, nothing must be changed. */
const THIN = ['--set', 'top.edgeThickness=1 1/4 in'];

const lines = (text: string): readonly string[] => text.trimEnd().split('\n');

async function document(args: readonly string[]) {
  const { code, out, err } = await run([...args, '--json']);
  expect(err).toBe('');
  return { code, json: JSON.parse(out) };
}

describe.concurrent('the commands', () => {
  test('list shows every design with its overall size', async () => {
    const { code, out, err } = await run(['list']);
    expect([code, err]).toEqual([0, '']);
    expect(
      lines(out)
        .slice(2)
        .map((line) => line.split(' ')[0]),
    ).toEqual(findDesigns().map(({ name }) => name));
    expect(out).toMatch(/^reading-table +Reading-room table +A +84 in +40 in +29 1\/2 in$/m);
  });

  test('list speaks the units that are asked', async () => {
    const { out } = await run(['list', '--units', 'mm']);
    expect(out).toMatch(/^reading-table .* 2133\.6 mm +1016 mm +749\.3 mm$/m);
  });

  test('params shows value, range and default, and marks what differs', async () => {
    const file = put(folder, 'values.json', '{ "top": { "length": "70 in", "width": "36 in" } }');
    const { code, out } = await run(['params', 'reading-table', '--params', file, '--set', 'top.length=72 in']);
    expect(code).toBe(0);
    expect(out).toMatch(/^\* {2}top\.length +72 in +16 in to 16 ft +84 in +length$/m);
    expect(out).toMatch(/^\* {2}top\.width +36 in /m);
    expect(out).toMatch(/^ {3}top\.thickness +2 1\/4 in +1\/2 in to 5 in +2 1\/4 in /m);
    expect(out).toContain('under 6 mm an edge chips in use');
    expect(out).toContain('; 2 differ from the default, marked *');
  });

  test('check is short, worst first, and counts', async () => {
    const { code, out } = await run(['check', 'reading-table', '--set', 'top.edgeThickness=12 mm']);
    expect(code).toBe(1);
    expect(out.indexOf('change it (')).toBe(0);
    expect(out.indexOf('look again (')).toBeGreaterThan(0);
    const ok = out.slice(out.indexOf('\nok ('));
    expect(lines(ok).length).toBeLessThan(12);
    expect(ok).toMatch(/cuts in stock \(\d+\), tenon thickness \(\d+\)/);
    expect(out).toContain('more on this part)');
    expect(lines(out).at(-1)).toMatch(/^reading-table: \d+ findings: \d+ change it, \d+ look again, .*\d+ ok$/);
  });

  test('check passes on "look again" unless it is strict', async () => {
    const [lenient, strict] = await Promise.all([
      run(['check', 'reading-table', ...THIN]),
      run(['check', 'reading-table', ...THIN, '--strict']),
    ]);
    expect([lenient.code, strict.code]).toEqual([0, 1]);
    expect(lenient.out).toBe(strict.out);
    expect(lenient.out).not.toContain('change it');
  });

  test('check shows everything when asked, in the units asked', async () => {
    const { out } = await run(['check', 'reading-table', '--all', '--units', 'mm', '--quiet']);
    const shown = lines(out).filter((line) => /^ {2}\S/.test(line));
    const counted = [...out.matchAll(/^(?:change it|look again|not checked|ok) \((\d+)\)$/gm)].map(([, n]) =>
      Number(n),
    );
    expect(counted.reduce((a, b) => a + b)).toBe(shown.length);
    expect(out).toMatch(/^ {6}value [\d.]+ mm \([\d.]+ mm to [\d.]+ mm\), limit 3 mm$/m);
    expect(out).toMatch(/^ {6}load: 1000 N on a corner, for a short time$/m);
    expect(out).toMatch(/^ {6}assumed: a thin plate of clear wood/m);
    expect(out).toMatch(/^ {6}rests on wood data still to be confirmed: elastic ratio/m);
    const numbers = lines(out).filter((line) => line.startsWith('      value '));
    expect(numbers.length).toBeGreaterThan(50);
    expect(numbers.filter((line) => /\d in\b/.test(line))).toEqual([]);
  });

  test('check shows a table over a range, with a chart when asked', async () => {
    const chart = path.join(folder, 'edge.svg');
    const vary = ['--vary', 'top.edgeThickness=1 in..2 1/2 in:4', '--chart', chart];
    const { code, out } = await run(['check', 'reading-table', ...vary]);
    expect(code).toBe(0);
    expect(out).toMatch(/^ +1 in +change it +[\d.]+ in L/m);
    expect(out).toMatch(/^ +2 1\/2 in +not allowed: top\.edgeThickness must be at most 2 1\/4 in: the upper limit is/m);
    expect(out).toContain('C change it, L look again, N not checked, no letter: ok');
    expect(out).toMatch(/^the same throughout: pieces fit together; /m);
    expect(lines(out).at(-1)).toBe(`the chart is in ${chart}`);
    expect(Math.max(...lines(out).map((line) => line.length))).toBeLessThan(121);
    expect(readFileSync(chart, 'utf8')).toMatch(/^<svg .*<\/svg>\n$/s);
  });

  test('check tells when the chart cannot be written, after the table', async () => {
    const chart = path.join(folder, 'none/edge.svg');
    const { code, out, err } = await run([
      'check',
      'reading-stool',
      '--vary',
      'tenon.depth=15 mm,20 mm',
      '--chart',
      chart,
    ]);
    expect(code).toBe(1);
    expect(out).toContain('20 mm');
    expect(err).toContain(`${chart} cannot be written`);
    expect(err).toContain('there is no such file or folder');
  });

  test('lists prints the cut list and the bill of materials', async () => {
    const { code, out } = await run(['lists', 'reading-table']);
    expect(code).toBe(0);
    expect(out).toMatch(/^Cut list: Reading-room table, revision A, \d+ pieces$/m);
    expect(out).toMatch(/^S1 +stretcher +1 /m);
    expect(out).toMatch(/^Bill of materials\nitem +quantity/m);
  });
});

describe.concurrent('JSON', () => {
  test('is one document on stdout for every command', async () => {
    const all = await Promise.all([
      document(['list']),
      document(['params', 'reading-table']),
      document(['check', 'reading-table']),
      document(['lists', 'reading-table']),
    ]);
    expect(all.map(({ code, json }) => [code, json.schema, json.command, json.exit, json.problems])).toEqual([
      [0, 1, 'list', 0, []],
      [0, 1, 'params', 0, []],
      [0, 1, 'check', 0, []],
      [0, 1, 'lists', 0, []],
    ]);
    const [list, params, check, lists] = all.map(({ json }) => json);
    expect(list.designs.find((one: { design: string }) => one.design === 'reading-table').overall.length).toBe(2133.6);
    expect(params.params.find((one: { path: string }) => one.path === 'top.length')).toMatchObject({
      value: 2133.6,
      text: '84 in',
      changed: false,
    });
    expect(check.counts['change it']).toBe(0);
    expect(lists.cutList.rows.length).toBeGreaterThan(8);
    expect(lists.bill.lumber.length).toBeGreaterThan(1);
  });

  test('has a row for each value of a range', async () => {
    const { code, json } = await document(['check', 'reading-stool', '--vary', 'seat.thickness=1 in..2 in:3']);
    expect([code, json.design, json.units]).toEqual([0, 'reading-stool', 'in']);
    expect(json.vary).toMatchObject([
      { path: 'seat.thickness', now: '1 1/4 in', values: ['1 in', '1 1/2 in', '2 in'] },
    ]);
    expect(json.rows).toHaveLength(3);
    expect(json.rows[0]).toMatchObject({ allowed: true, values: { 'seat.thickness': { text: '1 in', number: 25.4 } } });
    expect(json.rows[0].cells).toHaveLength(json.columns.length);
    expect(json.rows[2].mass).toBeGreaterThan(json.rows[0].mass);
  });

  test('has the problems in it, as data and as text', async () => {
    const { code, json } = await document(['check', 'reading-table', '--set', 'top.length=300 in']);
    expect([code, json.exit]).toEqual([2, 2]);
    expect(json.problems).toHaveLength(1);
    expect(json.problems[0]).toMatchObject({ code: 'out-of-range', path: 'top.length', given: '300 in', min: 406.4 });
    expect(json.problems[0].text).toContain('error: top.length is 300 in; it must be');
  });

  test('tells of a wrong line, too', async () => {
    const { code, json } = await document(['chek', '--forse']);
    expect(code).toBe(2);
    expect(json.problems.map((one: { code: string }) => one.code)).toEqual(['unknown-command', 'unknown-option']);
  });
});

describe.concurrent('help, version and color', () => {
  test('help goes to stdout when it is asked for', async () => {
    const [general, build, short, version] = await Promise.all([
      run(['--help']),
      run(['build', '--help']),
      run(['check', '-h']),
      run(['--version']),
    ]);
    expect(general).toEqual({ code: 0, out: `${generalHelp(COMMANDS)}\n`, err: '' });
    expect(build.out).toBe(`${commandHelp(COMMANDS.find(({ name }) => name === 'build')!)}\n`);
    expect(short.code).toBe(0);
    expect(version.out).toMatch(/^tablewright \d+\.\d+\.\d+\n$/);
  });

  test('every example of the help names options that its command takes', () => {
    for (const { name, options, examples } of COMMANDS) {
      const named = examples.flatMap((example) => [...example.matchAll(/--([a-z]+)/g)].map((match) => match[1]!));
      expect(named.filter((option) => !(options as readonly string[]).includes(option))).toEqual([]);
      expect(examples.every((example) => example.startsWith(name))).toBe(true);
    }
  });

  test('color comes on a terminal only, and never alone', async () => {
    const line = ['check', 'reading-table', ...THIN];
    const [piped, colored, refused] = await Promise.all([
      run(line),
      run(line, { FORCE_COLOR: '1' }),
      run(line, { NO_COLOR: '1' }),
    ]);
    const esc = String.fromCharCode(27);
    expect(piped.out).not.toContain(esc);
    expect(refused.out).toBe(piped.out);
    expect(colored.out).toContain(`${esc}[33mlook again (`);
    expect(colored.out.replaceAll(new RegExp(`${esc}\\[\\d+m`, 'g'), '')).toBe(piped.out);
  });
});
