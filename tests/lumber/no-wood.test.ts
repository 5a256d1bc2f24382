import { describe, expect, test } from 'vitest';
import { lumberPlan, paperPlan } from '../../lib/build/lumber-plan.ts';
import { lumberReport } from '../../lib/build/lumber-report.ts';
import { noWood } from '../../lib/build/no-wood.ts';
import { noWoodWords } from '../../lib/build/no-wood-words.ts';
import { lumberFiles } from '../../lib/build/output-lumber.ts';
import { searchCuts } from '../../lib/build/search-cuts.ts';
import { checkCutPlan } from '../../lib/derive/lumber/cut-plan/check-cut-plan.ts';
import { run } from '../cli/run-cli.ts';
import { readCsv } from '../readers/csv.ts';
import { pileWithout } from './pile-without.ts';
import { readingWithBoards } from './reading-boards.ts';

const text = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** Of the pile without the boards that the posts, bearers and feet come from, the rails are cut. */
const short = readingWithBoards(pileWithout(['4', '12', '16', '18', '19']));
const shortPlan = await paperPlan(short);
const shortFiles = await lumberFiles(short);

describe('where parts have no board', () => {
  const lacks = noWood(shortPlan);

  test('all others are planned all the same, and what is left over is told part by part', () => {
    expect(lacks.top).toBe(false);
    expect(lacks.parts).toContain('P1');
    const cut = shortPlan.cuts.flatMap(({ progress }) => progress.plan?.boards.flatMap(({ placed }) => placed) ?? []);
    const all = [...cut.map(({ part }) => part), ...lacks.parts];
    expect(all.toSorted()).toEqual(['B1', 'B2', 'F1', 'F2', 'P1', 'P2', 'P3', 'P4', 'R1', 'R2', 'S1']);
    expect(cut.length).toBeGreaterThan(1);
    for (const { job, progress } of shortPlan.cuts) {
      if (progress.plan) expect(checkCutPlan(job.problem, progress.plan)).toEqual([]);
    }
  });

  test('the table of cuts has a row for each, and one for what to buy', () => {
    const [head, ...rows] = readCsv(text(shortFiles.get('lumber/cut-plan.csv')!));
    const of = (kind: string) => rows.filter((row) => row[head!.indexOf('row')] === kind);
    expect(of('no board').map((row) => row[head!.indexOf('what')])).toEqual(lacks.parts);
    expect(of('no board').every((row) => row.at(-1))).toBe(true);
    expect(of('to buy').length).toBe(shortPlan.wanted.length);
    expect(of('to buy')[0]!.at(-1)).toMatch(/^(one board|\d boards) .* x .*, clear, would do$/);
  });

  test('the drawing says so in the color of warnings', () => {
    const svg = text(shortFiles.get('lumber/cut-plan.svg')!);
    expect(svg).toContain(noWoodWords(shortPlan)[0]!);
    expect(svg).toContain('clear blanks');
  });

  test('and so does the report', () => {
    const sections = lumberReport(short, shortPlan, 'in');
    expect(sections.find(({ title }) => title.startsWith('Tally'))!.title).toBe(
      `Tally while buying: go on buying: ${noWoodWords(shortPlan)[0]}`,
    );
    expect(sections.at(-1)!.lines.join('\n')).toMatch(/left over: [\s\S]*\nfor .* clear blanks? /);
  });
});

test('posts that are to match are left over together, and one board for all of them is asked for', async () => {
  const lumber = { leastWidth: '3 1/2 in', matchPosts: true } as const;
  const matched = Object.create(short, { design: { value: { ...short.design, lumber } } });
  const plan = await lumberPlan(matched, { strips: 70_000, cuts: 40 });
  const posts = noWood(plan).parts.filter((part) => part.startsWith('P'));
  expect([0, 4]).toContain(posts.length);
  const asked = plan.wanted.find(({ marks }) => marks.includes('P1'));
  expect(asked?.pieces).toBe(posts.length === 4 ? 4 : undefined);
  for (const { count } of asked?.boards ?? []) expect(count).toBe(1);
});

test('of parts that are to come from one board, none is cut where one is left over; the others are', async () => {
  const part = { length: 600, width: 80, count: 1 };
  const posts = ['P1', 'P2', 'P3', 'P4'].map((id) => ({ ...part, id, together: 'post' }));
  const board = { id: '1', length: 1900, width: 90, cost: 1, avoid: [] };
  const job = { wood: 'cherry', lumber: '12/4', costIn: 'board feet' } as const;
  const problem = { parts: [...posts, { ...part, id: 'R1' }], boards: [board], kerf: 3 };
  const { cuts } = await searchCuts([{ ...job, problem }], { cuts: 40 });
  expect(cuts[0]!.left.map(({ id }) => id)).toEqual(['P1', 'P2', 'P3', 'P4']);
  expect(cuts[0]!.progress.misfits.map(({ part: id }) => id).toSorted()).toEqual(['P1', 'P2', 'P3', 'P4']);
  expect(cuts[0]!.progress.plan!.boards.flatMap(({ placed }) => placed.map(({ part: id }) => id))).toEqual(['R1']);
});

describe('where the top has no plan', async () => {
  const thin = readingWithBoards(pileWithout(['2', '4', '6', '8', '10', '12', '14', '16', '18', '19']));
  const files = await lumberFiles(thin);

  test('the table of strips says why', () => {
    const [head, ...rows] = readCsv(text(files.get('lumber/strip-plan.csv')!));
    expect(rows.map((row) => row.at(-1))).toEqual([
      'no plan',
      expect.stringMatching(/0 of \d boards are thick enough/),
    ]);
    expect(rows.every((row) => row.length === head!.length && row.slice(0, -1).every((cell) => cell === ''))).toBe(
      true,
    );
    expect([...files.keys()]).not.toContain('lumber/strip-plan.svg');
  });

  test('and what is cut, too', () => {
    expect(text(files.get('lumber/cut-plan.svg')!)).toContain('the strips of the top have no plan');
    expect(text(files.get('lumber/cut-plan.csv')!)).toContain(',note,,,,,,"no board is kept for the strips');
  });
});

test('one page at least, where no board is opened', async () => {
  const files = await lumberFiles(readingWithBoards('mark,thickness,width,length\n1,1 in,3 in,20 in'));
  expect([...files.keys()]).toEqual([
    'lumber/buying-list.csv',
    'lumber/strip-plan.csv',
    'lumber/cut-plan.csv',
    'lumber/cut-plan.svg',
  ]);
  expect(text(files.get('lumber/cut-plan.svg')!)).toContain('no board for B1');
});

test('the command fails, and says what is missing', async () => {
  const milled = ['2', '4', '6', '8', '10', '14'].flatMap((mark) => ['--milled', `${mark}=2 1/4 in`]);
  const [bad, good] = await Promise.all([
    run(['lumber', 'reading-table', '--json', ...milled]),
    run(['lumber', 'reading-table', '--json']),
  ]);
  expect(bad.code).toBe(1);
  expect(JSON.parse(bad.out)).toMatchObject({ exit: 1, noWood: { top: true } });
  expect(good.code).toBe(0);
  expect(JSON.parse(good.out)).toMatchObject({
    noWood: { top: false, parts: [] },
    tally: { verdict: 'stop', by: 'plan' },
  });
});
