import { describe, expect, test } from 'vitest';
import { lumberPlan } from '../../lib/build/lumber-plan.ts';
import { milledReport } from '../../lib/build/lumber-report.ts';
import { type MilledPlan, milledPlan } from '../../lib/build/milled-plan.ts';
import { readMilled } from '../../lib/build/read-milled.ts';
import { searchStrips } from '../../lib/build/search-strips.ts';
import { stripProblemOf } from '../../lib/build/strip-problem-of.ts';
import { milledBoards } from '../../lib/derive/lumber/milled-boards.ts';
import { checkStripPlan } from '../../lib/derive/lumber/strip-plan/check-strip-plan.ts';
import { leastMoves } from '../../lib/derive/lumber/strip-plan/least-moves.ts';
import { movedBoards } from '../../lib/derive/lumber/strip-plan/moved-boards.ts';
import type { Board } from '../../lib/model/records.ts';
import { renderIssue } from '../../lib/params/render-issue.ts';
import { run } from '../cli/run-cli.ts';
import { metricWithBoards } from './metric-boards.ts';
import { readingWithBoards } from './reading-boards.ts';
import { randomPile } from './strip-plan/random-boards.ts';
import { solved } from './strip-plan/solved.ts';

const INCH = 25.4;
const WORK = { strips: 3_000_000, cuts: 4 };
const COARSE = { ...WORK, cuts: 1 };
const job = readingWithBoards();
const boards = job.records.boards!;

const lines = (found: MilledPlan, title: RegExp): readonly string[] =>
  milledReport(found, job.design.units).find((section) => title.test(section.title))!.lines;

describe('what is said of boards that came out otherwise', () => {
  const told = (texts: readonly string[]): string[] =>
    (readMilled(texts, 'in', boards).issues ?? []).map((issue) => renderIssue(issue, 'in').replace(/^error: /, ''));

  test('is read in both units', () => {
    expect(readMilled(['5=1 3/4 in', ' 6 = 70 mm '], 'in', boards)).toEqual({
      milled: [
        { mark: '5', thickness: 44.45 },
        { mark: '6', thickness: 70 },
      ],
    });
  });

  test('and everything that is wrong with it is told at once', () => {
    const all = told(['99=1 in', '5=2', '7', '7=1 3/4 in', '7=1 5/8 in', '3=9 in', '4=thin']);
    expect(all.map((text) => text.split('\n')[0])).toEqual([
      expect.stringMatching(/^the board of --milled is "99"; it must be 1, 2, 3, .* or 20$/),
      'board 5 is "2", without a unit; write 2 mm or 2 in',
      '"7" does not say which board came out how thick; write mark=thickness',
      'board 7 is given more than once: 1 3/4 in and 1 5/8 in',
      'board 3 is 9 in; it must be 1/8 in to 6 19/64 in',
      'board 4 is "thin"; it must be a length, 1/8 in to 6 19/64 in',
    ]);
    expect(all[1]).toMatch(/given by --milled "5=2"\n +try --milled "5=2 in"$/);
    expect(renderIssue(readMilled(['B1=45'], 'mm', boards).issues![0]!, 'mm')).toMatch(/try --milled "B1=45 mm"$/);
  });

  test('a defect stays as deep as it was, or goes through', () => {
    const [board] = milledBoards(
      boards.filter(({ mark }) => mark === '5'),
      [{ mark: '5', thickness: 9 }],
    );
    expect(board!.defects.map(({ face, depth }) => [face, depth])).toEqual([['through', 9]]);
    const [other] = milledBoards(
      boards.filter(({ mark }) => mark === '5'),
      [{ mark: '5', thickness: 40 }],
    );
    expect(other!.defects.map(({ face, depth }) => [face, depth])).toEqual([['A', 9.525]]);
    expect([other!.thickness, other!.milledFrom]).toEqual([40, 47.625]);
  });
});

describe('a board of the plan came out too thin for its strip', async () => {
  const found = await milledPlan(job, [{ mark: '11', thickness: 1.75 * INCH }], WORK);
  const [before, after] = [found.before.strips!.status.plan!, found.plan.strips!.status.plan!];

  test('the plan before is that of the boards as measured, the one after is right for them as they came out', async () => {
    const { strips } = await lumberPlan(job, { strips: WORK.strips, cuts: 1 });
    expect(before).toEqual(strips!.status.plan);
    const changed = boards.map((b) => (b.mark === '11' ? { ...b, thickness: 1.75 * INCH } : b));
    expect(checkStripPlan(stripProblemOf(job, changed)!, after)).toEqual([]);
    expect(found.plan.strips!.problem.boards.find(({ mark }) => mark === '11')!.thickness).toBeCloseTo(44.45, 9);
  });

  test('only what has to move does, told in words of the bench', () => {
    expect(found.moved!.map(({ mark }) => mark)).toEqual(['11', '20', '9']);
    const section = milledReport(found, 'in').at(-1)!;
    expect(section.title).toBe('What changes');
    expect(section.lines).toEqual([
      'dearer by 1.49: 62.63 in place of 61.14',
      'reserve missing 1.72 more, 1/64 in in place of 0 in; wood 0.23 less, 76.1 board feet in place of 76.5 board feet',
      'least reserve over the wedge 3/32 in in place of 1/8 in',
      'spared, and free for other parts: 11',
      'taken in from what was left over: 20',
      'the other parts are cut from the same boards as before',
    ]);
    expect(section.table!.rows.map(([mark]) => mark)).toEqual(['9', '11', '20']);
    expect(section.table!.rows[1]).toEqual([
      '11',
      'strip 7, show board, face A up, far end first, rip to 5 5/8 in',
      'left over',
    ]);
  });

  test('first the plan as measured in short; tally and cut plan are for the boards as they came out', () => {
    expect(lines(found, /^What if/)).toEqual([
      'board 11 came out 1 3/4 in thick, measured 1 27/32 in',
      'the strips as measured: cost 61.14; best possible; least reserve over the wedge 1/8 in',
      'all that follows is for the boards as they came out',
    ]);
    expect(found.plan.tally!.strips.flatMap((row) => row.boards)).toContain('11');
    const cut = found.plan.cuts.flatMap(({ job: own }) => own.problem.boards.map(({ id }) => id));
    expect(cut).toContain('11');
    expect(cut).not.toContain('20');
    expect(found.job.records.boards!.find(({ mark }) => mark === '11')!.thickness).toBeCloseTo(44.45, 9);
  });
});

describe('what changes little', () => {
  test('a hair less moves nothing, and says so', async () => {
    const found = await milledPlan(job, [{ mark: '5', thickness: (1 + 27 / 32) * INCH }], COARSE);
    expect(found.moved).toEqual([]);
    expect(lines(found, /^What changes/)[0]).toMatch(/^nothing moves in the top: every board stays in its strip/);
  });

  test('so does a board that the strips have no use for', async () => {
    const found = await milledPlan(job, [{ mark: '15', thickness: INCH }], COARSE);
    expect(lines(found, /^What if/)[0]).toMatch(/too short, too narrow or too wet anyway$/);
    expect(lines(found, /^What changes/).slice(0, 3)).toEqual([
      expect.stringMatching(/^nothing moves/),
      'it costs the same: 61.14',
      'least reserve over the wedge 1/8 in, as before',
    ]);
  });

  test('other parts that come from other boards are told with them', async () => {
    const found = await milledPlan(job, [{ mark: '13', thickness: INCH }], { ...WORK, strips: 20_000, cuts: 40 });
    expect(found.recut).toEqual([{ part: 'S1', before: '13', after: expect.stringMatching(/^\d+$/) }]);
    expect(lines(found, /^What changes/).at(-1)).toMatch(/^S1: cut from \d+ in place of 13$/);
    // Stopped while it plans for the second time: before, the parts were cut.
    let cutting = false;
    const onProgress = (text: string): boolean => {
      cutting ||= /^as measured: \d+\/4: /.test(text);
      return text.startsWith('as they came out: strips: ');
    };
    const work = { strips: 20_000, cuts: 40, onProgress };
    const stopped = await milledPlan(job, [{ mark: '13', thickness: INCH }], work);
    expect([cutting, stopped.before.stopped, stopped.plan.stopped, stopped.recut]).toEqual([true, false, true, []]);
    expect(lines(stopped, /^What changes/).join()).not.toContain('cut from');
  });

  test('wood that is milled off is no saving: thinner boards never make a proved plan cheaper', async () => {
    for (const mark of ['6', '10']) {
      const found = await milledPlan(job, [{ mark, thickness: boards.find((b) => b.mark === mark)!.thickness - 6 }], {
        strips: 3_000_000,
        cuts: 1,
      });
      const [was, is] = [found.before.strips!.status, found.plan.strips!.status];
      expect([mark, was.done, is.done]).toEqual([mark, true, true]);
      expect(is.plan!.value).toBeGreaterThanOrEqual(was.plan!.value - 1e-6);
    }
  });
});

describe('when nothing is left', () => {
  const thin = ['2', '4', '6', '8', '10', '14'].map((mark) => ({ mark, thickness: 2.25 * INCH }));

  test('the requirement that fails, and what would mend it', async () => {
    const found = await milledPlan(job, thin, { ...WORK, cuts: 40, explain: true });
    const [why, fails, mends] = lines(found, /^Strip plan: there is none/);
    expect(why).toMatch(/0 of 14 boards are thick enough for the center line$/);
    expect(fails).toBe('what fails: they give 2 3/16 in on the center line at most, and 2 1/4 in is wanted');
    expect(mends).toMatch(/^any one of these would do: .*a top 1\/16 in thinner on the center line/);
    expect(lines(found, /^What changes/)).toEqual([
      expect.stringMatching(/^with the boards as they came out there is no/),
    ]);
    expect(lines(found, /^Cut plan/).join()).toContain('no board is kept for the strips');
  });

  test('and that it ends when it is stopped', async () => {
    let asked = 0;
    const problem = stripProblemOf(job, milledBoards(boards, thin))!;
    const onProgress = (): boolean => ++asked > 12;
    const found = await searchStrips(problem, { ...WORK, explain: true, onProgress });
    expect([found.stopped, found.shortage]).toEqual([true, undefined]);
  });
});

describe('the fewest moves among plans that cost alike', () => {
  test('a mirror image and two strips that changed places are turned back', () => {
    const problem = randomPile({ seed: 12, boards: 16, strips: 6 });
    const before = solved(problem).plan!;
    const mirrored = { ...before, strips: before.strips.toReversed() };
    expect(movedBoards(before, mirrored).length).toBeGreaterThan(5);
    expect(movedBoards(before, leastMoves(problem, mirrored, before)!)).toEqual([]);
    const pinned = { ...problem, pins: [{ mark: before.strips[1]!.show.mark, strip: 2 }] };
    expect(leastMoves(pinned, undefined, mirrored)).toBeUndefined();
  });

  test('a board milled to the thickness that it had stays as it lies, its thicker edge where it was', () => {
    const pile = randomPile({ seed: 4, boards: 10, strips: 4 });
    const boards = pile.boards.map((b): Board => {
      return { ...b, corners: [b.thickness, b.thickness + 1, b.thickness, b.thickness + 1] };
    });
    const before = solved({ ...pile, boards }).plan!;
    for (const { show } of before.strips) {
      const { thickness } = boards.find(({ mark }) => mark === show.mark)!;
      const next = { ...pile, boards: milledBoards(boards, [{ mark: show.mark, thickness }]) };
      const after = leastMoves(next, solved(next).plan, before)!;
      expect([show.mark, movedBoards(before, after)]).toEqual([show.mark, []]);
      expect(checkStripPlan(next, after)).toEqual([]);
    }
  });

  test('a plan whose board is too thin now is no candidate', () => {
    const problem = randomPile({ seed: 12, boards: 16, strips: 6 });
    const before = solved(problem).plan!;
    const mark = before.strips[2]!.show.mark;
    const thinner = problem.boards.map((b) => (b.mark === mark ? { ...b, thickness: 6 } : b));
    const next = { ...problem, boards: thinner };
    const found = solved(next, {}, 400_000).plan!;
    const least = leastMoves(next, found, before)!;
    expect(checkStripPlan(next, least)).toEqual([]);
    expect(least.value).toBeLessThanOrEqual(found.value + 1e-6);
    expect(movedBoards(before, least).length).toBeLessThanOrEqual(movedBoards(before, found).length);
    expect(movedBoards(before, least).length).toBeGreaterThan(0);
  });
});

describe('the command', () => {
  test('plans for boards as they came out, as JSON too, and refuses what it cannot read', async () => {
    const [good, none, both] = await Promise.all([
      run(['lumber', 'reading-table', '--json', '--milled', '11=1 3/4 in']),
      run(['lumber', 'meeting-table', '--milled', '5=1 3/4']),
      run(['lumber', 'reading-table', '--set', 'top.length=3', '--milled', '5=2']),
    ]);
    expect(good.code).toBe(0);
    const { milled, strips } = JSON.parse(good.out);
    expect(milled.boards).toEqual([{ mark: '11', thickness: 44.45, measured: expect.closeTo(46.83125, 9) }]);
    expect(milled.before.done).toBe(true);
    expect(milled.dearer).toBeCloseTo(strips.plan.value - milled.before.plan.value, 9);
    expect(milled.moved.find((one: { mark: string }) => one.mark === '11').before).toMatchObject({
      strip: 7,
      layer: 'show',
    });
    expect(none.code).toBe(2);
    expect(none.err).toMatch(
      /--milled goes only with a boards.csv beside the design\n +there is no designs\/meeting-table/,
    );
    expect(none.err).toContain('board 5 is "1 3/4", without a unit');
    expect(both.code).toBe(2);
    expect(both.err).toMatch(/top\.length is "3"[\s\S]*board 5 is "2"[\s\S]*2 problems/);
  });
});

test('in millimetres', async () => {
  const metric = metricWithBoards();
  const found = await milledPlan(metric, [{ mark: 'B1', thickness: 40 }], { strips: 400_000, cuts: 1 });
  const all = milledReport(found, 'mm').flatMap(({ lines: own }) => own);
  expect(all[0]).toBe('board B1 came out 40 mm thick, measured 45 mm');
  expect(all.join('\n')).not.toMatch(/\d in\b(?! place)|sq in/);
});
