import { describe, expect, test } from 'vitest';
import { boardsOfCuts } from '../../lib/build/boards-of-pieces.ts';
import { lumberData } from '../../lib/build/lumber-data.ts';
import { lumberPlan } from '../../lib/build/lumber-plan.ts';
import { lumberReport, milledReport } from '../../lib/build/lumber-report.ts';
import { milledPlan } from '../../lib/build/milled-plan.ts';
import { noWood } from '../../lib/build/no-wood.ts';
import { searchStrips } from '../../lib/build/search-strips.ts';
import { stripProblemOf } from '../../lib/build/strip-problem-of.ts';
import { checkCutPlan } from '../../lib/derive/lumber/cut-plan/check-cut-plan.ts';
import { checkStripPlan } from '../../lib/derive/lumber/strip-plan/check-strip-plan.ts';
import { pileWithout } from './pile-without.ts';
import { readingWithBoards } from './reading-boards.ts';

const WORK = { strips: 400_000, cuts: 40 };

/** Without these the posts and bearers have to come from boards that the strips would like, too. */
const GONE = ['12', '16', '18', '19'];
const job = readingWithBoards(pileWithout(GONE));
const boards = job.records.boards!;
const alone = (await searchStrips(stripProblemOf(job, boards)!, WORK)).status.plan!;
const plan = await lumberPlan(job, WORK);
const strips = plan.strips!.status.plan!;
const inTop = strips.strips.map(({ show }) => show.mark);

describe('boards that the other parts need more than the strips', () => {
  test('are kept from them, and every strip and every part has its board', () => {
    expect(plan.kept!.boards.length).toBeGreaterThan(0);
    expect(inTop.filter((mark) => plan.kept!.boards.includes(mark))).toEqual([]);
    expect(alone.strips.filter(({ show }) => plan.kept!.boards.includes(show.mark)).length).toBeGreaterThan(0);
    expect(noWood(plan)).toEqual({ top: false, parts: [] });
    const free = boards.filter(({ mark }) => !plan.kept!.boards.includes(mark));
    expect(checkStripPlan(stripProblemOf(job, free)!, strips)).toEqual([]);
    for (const { job: own, progress } of plan.cuts) expect(checkCutPlan(own.problem, progress.plan!)).toEqual([]);
    const cut = boardsOfCuts(plan);
    expect([...cut.values()].filter((mark) => inTop.includes(mark))).toEqual([]);
    expect(plan.kept!.parts.every((part) => plan.kept!.boards.includes(cut.get(part)!))).toBe(true);
  });

  test('cost the strips what they cost more than alone, and it is said', () => {
    expect(plan.kept!.dearer).toBeCloseTo(strips.value - alone.value, 9);
    expect(plan.kept!.dearer).toBeGreaterThan(0);
    const lines = lumberReport(job, plan, 'in').flatMap((section) => section.lines);
    const said = lines.filter((line) => line.startsWith('boards 2, 4 are kept for '));
    expect(said).toEqual([
      expect.stringMatching(
        /^boards 2, 4 are kept for .*P1 to P4.*; without that the strips would cost \d+(\.\d+)? less/,
      ),
    ]);
    expect(lumberData(plan)).toMatchObject({ kept: { boards: ['2', '4'] }, noWood: { top: false, parts: [] } });
  });

  test('the plan decides over the tally', () => {
    expect(plan.tally).toMatchObject({ verdict: 'stop', by: 'plan', bySizes: 'go on' });
    const tally = lumberReport(job, plan, 'in').find(({ title }) => title.startsWith('Tally'))!;
    expect(tally.title).toBe('Tally while buying: stop buying: the plan below has a board for everything');
    expect(tally.lines.join()).toContain('sizes alone miss something');
  });

  test('are the same whatever the order of the pile', async () => {
    const turned = Object.create(job, { records: { value: { ...job.records, boards: boards.toReversed() } } });
    const again = await lumberPlan(turned, WORK);
    expect([again.kept, again.strips!.status.plan!.value]).toEqual([plan.kept, strips.value]);
  });

  test('are not those that are settled by hand', async () => {
    const lumber = { leastWidth: '3 1/2 in', pinned: '4 strip 4' } as const;
    const pinned = Object.create(job, { design: { value: { ...job.design, lumber } } });
    const found = await lumberPlan(pinned, WORK);
    expect(found.strips!.status.plan!.strips[3]!.show.mark).toBe('4');
    expect(found.kept?.boards ?? []).not.toContain('4');
  });

  test('with boards that came out otherwise, too', async () => {
    const found = await milledPlan(job, [{ mark: '4', thickness: 70 }], WORK);
    expect([found.before.kept, noWood(found.plan).parts]).toEqual([plan.kept, []]);
    const lines = milledReport(found, 'in').flatMap((section) => section.lines);
    expect(lines[0]).toMatch(/; as measured it is kept for other parts$/);
  });
});

test('nothing is kept when nothing is short of wood, nor when it would not help', async () => {
  const all = await lumberPlan(readingWithBoards(), WORK);
  expect([all.kept, noWood(all)]).toEqual([undefined, { top: false, parts: [] }]);
  const none = await lumberPlan(readingWithBoards(pileWithout([...GONE, '2', '4'])), WORK);
  expect(none.kept).toBeUndefined();
  expect(none.strips!.status.plan).toBeDefined();
  expect(noWood(none).parts).toContain('P1');
});

test('stopped while boards are kept, it is the plan before', async () => {
  const onProgress = (text: string): boolean => text.startsWith('boards ');
  const found = await lumberPlan(job, { ...WORK, onProgress });
  expect([found.stopped, found.kept, found.strips!.status.plan!.value]).toEqual([true, undefined, alone.value]);
});
