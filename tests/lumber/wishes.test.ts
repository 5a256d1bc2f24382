import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import design from '../../designs/reading-table/design.ts';
import { lumberPlan, paperPlan } from '../../lib/build/lumber-plan.ts';
import { pinWords } from '../../lib/build/pin-words.ts';
import { readDesign } from '../../lib/build/read-design.ts';
import { readPins } from '../../lib/build/read-pins.ts';
import { readRecords } from '../../lib/build/read-records.ts';
import { STRIP_WEIGHTS } from '../../lib/derive/lumber/strip-plan/strip-settings.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { renderIssues } from '../../lib/params/render-issue.ts';
import { defineLumberWishes } from '../../lib/shop/lumber-wishes.ts';
import { run, start } from '../cli/run-cli.ts';
import { readingWithBoards } from './reading-boards.ts';

describe('wishes for lumber', () => {
  test('boards settled by hand are read, and everything that cannot be is told', () => {
    expect(readPins('3 strip 2; 7 show, A up, turned; 9; 11 under, not turned')).toEqual({
      pins: [
        { mark: '3', strip: 2 },
        { mark: '7', layer: 'show', faceUp: 'A', turned: true },
        { mark: '9' },
        { mark: '11', layer: 'bottom', turned: false },
      ],
      issues: [],
    });
    expect(readPins('3 strip two; 7; 7 show').issues.map(({ given, because }) => [given, because])).toEqual([
      ['3 strip two', expect.stringMatching(/^the mark, then strip and its number from the left/)],
      ['7 show', 'board 7 stands twice'],
    ]);
  });

  test('an entry that says two things of one board is told, with the entry that it was nearest to', () => {
    const { pins, issues } = readPins('6 A up, B up; 7 turned, not turned; 8 strip 1, strip 2; 9 show, under; 5 trned');
    expect(pins).toEqual([]);
    expect(issues.map(({ because, try: instead }) => [because, instead])).toEqual([
      ['b up does not go with what the entry says before', '6 A up'],
      ['not turned does not go with what the entry says before', '7 turned'],
      ['strip 2 does not go with what the entry says before', '8 strip 1'],
      ['under does not go with what the entry says before', '9 show'],
      [expect.stringMatching(/^the mark, then/), '5 turned'],
    ]);
    expect(readPins('6 A up, a up').pins).toEqual([{ mark: '6', faceUp: 'A' }]);
    expect(readPins('7 strip 2; 7 show').issues.map((issue) => issue.try)).toEqual(['7 strip 2, show']);
    for (const { try: instead = '' } of issues) expect(readPins(instead).issues).toEqual([]);
  });

  test('all that is wrong with settled boards comes at once, each with what to try, and names the design file', () => {
    const settled = { ...design, lumber: { pinned: '1 A up, B up; 99 strip 1; 2 strip 2; 3 strip 2; 4 strip 30' } };
    const text = ['mark,thickness,width,length', ...['1', '2', '3', '4', '9'].map((m) => `${m},2 in,5 in,90 in`)];
    const boards = { text: text.join('\n'), from: 'boards.csv' };
    const values = readValues(design.params, design.values).values!;
    const { issues = [] } = readRecords(settled, values, { boards }, 'designs/x/design.ts');
    expect(issues.map(({ given, try: instead }) => [given, instead])).toEqual([
      ['1 A up, B up', '1 A up'],
      ['99', '9 strip 1'],
      ['3 strip 2', '3 strip 3'],
      ['4 strip 30', '4 strip 8'],
    ]);
    for (const { from } of issues) expect(from).toBe('designs/x/design.ts');
    // Without a table of boards what cannot be read is told all the same.
    expect(readRecords(settled, values, {}).issues).toHaveLength(1);
  });

  test('the block of a design is judged with the rest of it', () => {
    const { issues } = readDesign(
      { default: { ...design, lumber: { rings: 'spiral', pinned: '3 sideways' } } },
      'design.ts',
    );
    expect(renderIssues(issues!, 'in')).toMatch(/lumber.rings is "spiral"; it must be alternate or ignore/);
    const sideways = { ...design, lumber: { pinned: '3 sideways' } };
    const pinned = readRecords(sideways, readValues(design.params, design.values).values!, {}, 'design.ts');
    expect(renderIssues(pinned.issues!, 'in')).toMatch(
      /lumber.pinned is "3 sideways"; it must be a board settled by hand[\s\S]*try lumber: \{ pinned: '3 strip 2; 7 show, A up, turned' \}/,
    );
  });

  test('a board that is not in the table is told with the table', () => {
    const stray = { ...design, lumber: { pinned: '99 strip 1' } };
    const { issues } = readRecords(stray, readValues(design.params, design.values).values!, {
      boards: { text: 'mark,thickness,width,length\n1,2 in,5 in,90 in', from: 'boards.csv' },
    });
    expect(renderIssues(issues!, 'in')).toMatch(/lumber.pinned is "99"; it must be 1\n/);
  });

  test('strips are counted from 1 to as many as there are, and two boards do not lie in one place', () => {
    expect(readPins('3 strip 0').issues.map(({ because }) => because)).toEqual([
      'strips are counted from the left edge, and the first is 1',
    ]);
    const text = [
      'mark,thickness,width,length',
      ...['1', '2', '3'].map((mark) => `${mark},2 1/2 in,5 in,90 in`),
      '4,2 1/2 in,5 in,60 in',
      '5,2 1/2 in,1 3/4 in,90 in',
    ].join('\n');
    const told = (lumber: { pinned: string; strips?: number; layers?: 'either' }): (string | undefined)[] => {
      const { issues = [] } = readRecords({ ...design, lumber }, readValues(design.params, design.values).values!, {
        boards: { text, from: 'boards.csv' },
      });
      return issues.map(({ given, because }) => `${given}: ${because}`);
    };
    expect(told({ pinned: '1 strip 9; 2 strip 2; 3 strip 2; 4 strip 1; 5 strip 3' })).toEqual([
      '1 strip 9: there are 8 strips',
      '3 strip 2: board 2 lies there already',
      '4 strip 1: the board is 60 in long, and the top 84 in; no other is left: leave it out',
      '5 strip 3: the board is 1 3/4 in wide, and a strip 2 in at least; no other is left: leave it out',
    ]);
    expect(told({ pinned: '1 strip 9; 2 strip 10', strips: 9 })).toEqual(['2 strip 10: there are 9 strips']);
    expect(told({ pinned: '1 under' })).toEqual([expect.stringMatching(/^1 under: the strips have one board each/)]);
    expect(told({ pinned: '1 strip 2, show; 2 strip 2, under; 3 strip 2, show', layers: 'either' })).toEqual([
      '3 strip 2, show: board 1 lies there already',
    ]);
  });

  test('a plan tells how all of it would be settled, and comes out the same when it is', async () => {
    const job = readingWithBoards();
    const plan = (await paperPlan(job)).strips!.status.plan!;
    const { pins, issues } = readPins(pinWords(plan));
    expect(issues).toEqual([]);
    expect(pins).toHaveLength(8);
    const { mark, faceUp, turned } = plan.strips[1]!.show;
    expect(pins[1]).toEqual({ mark, strip: 2, faceUp, turned });
    const wishes = { leastWidth: '3 1/2 in', pinned: pinWords(plan) } as const;
    const pinned = Object.create(job, { design: { value: { ...job.design, lumber: wishes } } });
    const again = await lumberPlan(pinned, { strips: 400_000, cuts: 1 });
    expect(again.strips!.status.plan!.strips).toEqual(plan.strips);
    const bottom = { ...plan.strips[1]!.show, mark: '99', turned: false };
    const layered = { ...plan, strips: [{ ...plan.strips[0]!, bottom }] };
    expect(readPins(pinWords(layered)).pins.map(({ mark, layer }) => [mark, layer])).toEqual([
      ['17', 'show'],
      ['99', 'bottom'],
    ]);
  });

  test('a board that is settled stays, wet or not', async () => {
    const job = readingWithBoards();
    const wishes = { leastWidth: '3 1/2 in', pinned: '15 strip 8' } as const;
    const pinned = Object.create(job, { design: { value: { ...job.design, lumber: wishes } } });
    const { strips } = await lumberPlan(pinned, { strips: 70_000, cuts: 1 });
    expect(strips!.status.plan!.strips[7]!.show.mark).toBe('15');
  });

  test('a pinned board lies where it was put', async () => {
    const job = readingWithBoards();
    const wishes = { leastWidth: '3 1/2 in', pinned: '2 strip 4, B up', rings: 'ignore' } as const;
    const pinned = Object.create(job, { design: { value: { ...job.design, lumber: wishes } } });
    const { strips } = await lumberPlan(pinned, { strips: 70_000, cuts: 1 });
    expect(strips!.status.plan!.strips[3]!.show).toMatchObject({ mark: '2', faceUp: 'B' });
  });
});

describe('the README', () => {
  test('has the weights of the strip plan, those of the wishes, and their defaults', () => {
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    const rows = [...readme.matchAll(/^\| `(\w+)` \| ([\d.]+) \| .* \|$/gm)].map(([, name, value]) => [
      name,
      Number(value),
    ]);
    expect(Object.fromEntries(rows)).toEqual(STRIP_WEIGHTS);
    expect(defineLumberWishes().weights).toEqual(STRIP_WEIGHTS);
  });
});

describe('the command', () => {
  test('tells what to buy and where each board goes, as text and as JSON', async () => {
    const { code, out } = await run(['lumber', 'reading-table', '--json']);
    expect(code).toBe(0);
    const told = JSON.parse(out);
    expect(told.buying.top.boardFeet).toBeCloseTo(55.4167, 3);
    expect(told.strips.done).toBe(true);
    const plain = await run(['lumber', 'meeting-table', '--units', 'mm', '--quiet']);
    expect([plain.code, plain.err]).toEqual([0, '']);
    expect(plain.out).toContain('there is no boards.csv beside the design yet');
  });

  test('Ctrl-C gives the best plan so far', async () => {
    const { child, ended } = start(['lumber', 'reading-table']);
    await new Promise((resolve) => child.stderr!.once('data', resolve));
    child.kill('SIGINT');
    const { code, out } = await ended;
    expect(code).toBe(130);
    expect(out).toMatch(/Strip plan[\s\S]*it was stopped/);
  });
});
