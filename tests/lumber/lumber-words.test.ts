import { describe, expect, test } from 'vitest';
import { costWords } from '../../lib/build/cost-words.ts';
import { filledColumns } from '../../lib/build/filled-columns.ts';
import { lumberPlan, paperPlan } from '../../lib/build/lumber-plan.ts';
import { lumberReport } from '../../lib/build/lumber-report.ts';
import { marksList } from '../../lib/build/mark-order.ts';
import { mendWords } from '../../lib/build/mend-words.ts';
import { misfitWords } from '../../lib/build/misfit-words.ts';
import { proofText } from '../../lib/build/plan-proof.ts';
import { STRIP_ORDER, STRIP_WEIGHTS } from '../../lib/derive/lumber/strip-plan/strip-settings.ts';
import { lumber } from '../../scripts/commands/lumber.ts';
import type { Options } from '../../scripts/line/options.ts';
import { readOptions } from '../../scripts/line/read-options.ts';
import { metricWithBoards } from './metric-boards.ts';
import { readingWithBoards } from './reading-boards.ts';

const job = readingWithBoards();

describe('what a strip plan costs', async () => {
  const { strips } = await paperPlan(job);
  const plan = strips!.status.plan!;

  test('is told by its terms, dearest first, and the shares add up to it', () => {
    const words = costWords(plan, strips!.problem, 'in');
    const shares = [...words.matchAll(/(?:of|\+) [a-z ]+ ([\d.]+) \(/g)].map(([, cost]) => Number(cost));
    expect(shares.length).toBeGreaterThan(1);
    expect(shares).toEqual(shares.toSorted((a, b) => b - a));
    expect(Math.abs(shares.reduce((a, b) => a + b) - plan.value)).toBeLessThan(0.005 * shares.length);
    expect(words).toMatch(/tones of neighbors [\d.]+ \([\d.]+ altogether\)/);
    expect(words).toMatch(/; nothing for .*rings alike/);
  });

  test('amounts are in the units of the reader, worked out by hand', () => {
    // A board foot is 2.359737 liters, a square decimeter 15.5 square inches.
    const terms = {
      ...plan.terms,
      volume: 23.59737,
      shownDefects: 2,
      rings: 1,
      undersideDefects: 0,
      reserve: 0,
      tone: 0,
    };
    const [inches, metric] = (['in', 'mm'] as const).map((units) =>
      costWords({ ...plan, terms }, strips!.problem, units),
    );
    expect(inches).toMatch(
      /^made of defects shown 100 \(31 sq in, as wide as the boards are\) \+ wood 5\.9 \(10 board feet, thick boards counted up\) \+/,
    );
    expect(inches).toContain('rings alike 2 (1 pair)');
    expect(metric).toContain('defects shown 100 (200 cm2, as wide as the boards are)');
    expect(metric).toContain('(23.6 liters, thick boards counted up)');
    expect(STRIP_WEIGHTS.shownDefects).toBe(50);
  });

  test('of terms in order there is no cost, and how much of each is told', () => {
    const settings = { ...strips!.problem.settings, preference: { mode: 'ordered', order: STRIP_ORDER } as const };
    expect(costWords(plan, { ...strips!.problem, settings }, 'in')).toMatch(
      /^in this order: reserve missing 0 in; defects shown [\d.]+ sq in, as wide as the boards are; rings alike 0 pairs; tones of neighbors/,
    );
  });
});

describe('what boards cost in the cut plan', () => {
  const cutLines = async (own: typeof job): Promise<string> => {
    const plan = await paperPlan(own);
    return lumberReport(own, plan, own.design.units)
      .find(({ title }) => title === 'Cut plan')!
      .lines.join('\n');
  };

  test('prices, or board feet where a board has none', async () => {
    expect(await cutLines(job)).toMatch(
      /^12\/4: 2 boards for \d+, by their prices, \d+ % of it in parts; best possible$/m,
    );
    expect(await cutLines(metricWithBoards())).toMatch(/^16\/4: one board of 11\.5 board feet, \d+ % of it in parts/m);
  });
});

describe('words', () => {
  test('of a search that has hardly begun', () => {
    expect(proofText({ done: false, gap: 5e10 })).toBe('how far from the best possible is not known');
    expect(proofText({ done: false, gap: 0.0312 })).toBe('within 3.2 % of the best possible');
  });

  test('marks stand as they are looked for on the bench', () => {
    expect(marksList(['11', 'B2', '2', 'B1', '1'])).toBe('1, 2, 11, B1, B2');
    expect(marksList([])).toBe('none');
  });

  test('empty columns are left out on a screen', () => {
    const columns = [{ head: 'a' }, { head: 'b' }];
    expect(
      filledColumns({
        columns,
        rows: [
          ['1', ''],
          ['', ''],
        ],
      }),
    ).toEqual({ columns: [{ head: 'a' }], rows: [['1'], ['']] });
  });

  test.each([
    [{ what: 'boards too few', value: 5, wanted: 8, mends: [] }, /^what fails: 3 more boards at least$/],
    [
      { what: 'width', value: 25.4 * 38.01, wanted: 25.4 * 40.4375, mends: [] },
      /cover 38 in across, .* wants 40 7\/16 in$/,
    ],
    [
      { what: 'least width', value: 1016, wanted: 1117.6, mends: [] },
      /least width are 44 in across, .* blank is 40 in$/,
    ],
    [
      { what: 'thickness', value: 31.75, wanted: 57.15, mends: [] },
      /too thin for 2 1\/4 in .*for a top 1\/4 in thinner, too$/,
    ],
    [{ what: 'seam', value: 0, wanted: 1, mends: [] }, /a seam has to lie on the center line/],
  ] as const)('why there is no plan: %o', (shortage, words) => {
    const [fails, ...rest] = mendWords(shortage, 'in');
    expect(fails).toMatch(words);
    expect(rest).toEqual(shortage.what === 'boards too few' ? [] : ['no one small change would do']);
  });

  test('of parts that are left over, those with one reason together', () => {
    const one = { count: 1, short: 0, narrow: 0, nearest: '7', wanted: { length: 600, width: 80 } };
    expect(
      misfitWords([
        { ...one, part: 'R2', reason: 'too large' },
        { ...one, part: 'R1', reason: 'too large' },
        { ...one, part: 'S1', count: 2, reason: 'zones in the way' },
      ]),
    ).toEqual([
      'R1, R2 left over: no board is large enough',
      '2 of S1 left over: defects are in the way on every board that is large enough',
    ]);
    const { nearest: _, ...none } = one;
    expect(misfitWords([{ ...none, part: 'R1', reason: 'too large' }])).toEqual(['R1 left over: there is no board']);
  });

  test('which of several settled boards is in the way', () => {
    const shortage = {
      what: 'pins',
      value: 3,
      wanted: 0,
      mends: [{ change: 'without the pins' }],
      freed: ['15'],
    } as const;
    expect(mendWords(shortage, 'in')).toEqual([
      'what fails: the boards settled by hand leave no place for the others',
      'it would do to leave open where one of these lies: 15',
      'any one of these would do: no boards settled by hand',
    ]);
  });
});

test('Ctrl-C while the library is loaded: what there is, and the code for it', async () => {
  const [said, told]: [string[], string[]] = [[], []];
  const options: Options = readOptions([], lumber, []).options;
  const reporter = {
    result: (text: string) => void said.push(text),
    summary: () => {},
    progress: (text: string) => void told.push(text),
    problems: () => {},
    done: () => {},
    paint: (_: unknown, text: string) => text,
  };
  const listeners = process.listenerCount('SIGINT');
  const running = lumber.run({ args: ['reading-table'], options, reporter: reporter as never });
  process.emit('SIGINT');
  const { exit, json } = await running;
  expect(exit).toBe(130);
  expect(told).toEqual(['stopping; this is what there is']);
  expect(said.join()).toMatch(
    /Buying list[\s\S]*Strip plan, from the left edge\ncost [\s\S]*it was stopped[\s\S]*Cut plan/,
  );
  expect(json).toMatchObject({ stopped: true });
  expect(process.listenerCount('SIGINT')).toBe(listeners);
});

test('a search without boards has nothing to stop', async () => {
  expect((await lumberPlan(Object.create(job, { records: { value: {} } }), { strips: 1, cuts: 1 })).stopped).toBe(
    false,
  );
});
