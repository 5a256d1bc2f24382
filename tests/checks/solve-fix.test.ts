import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Goal, solvedFixes } from '../../lib/derive/checks/solve-fix.ts';
import { type Lever, madeUp, readLever } from './made-up-tune.ts';

type Curve = (value: number) => number | undefined;

const LEVER: Lever = { now: 10, min: 0, max: 100, step: 1 };

/** What is found, and every value that was tried, for one lever whose measure is a function of it. */
function found(curve: Curve, goal: Pick<Goal, 'limit' | 'want'>, lever: Partial<Lever> = {}) {
  const own = { ...LEVER, ...lever };
  const { context, tries } = madeUp({ lever: own });
  const fixes = solvedFixes(context, {
    ...goal,
    measure: (c) => curve(readLever(c)?.value ?? own.now),
    levers: ['lever'],
    say: (value) => `${Number(value.toFixed(6))}`,
  });
  return { fix: fixes[0], tried: tries.get('lever') ?? [], fixes };
}

const atMost = (limit: number) => ({ limit, want: 'at most' as const });
const atLeast = (limit: number) => ({ limit, want: 'at least' as const });

/** Most tries for one way of a lever; up and down together are twice as many. */
const MOST_TRIES = 16;

describe('a fix that is found by trying', () => {
  it('is the least number of whole steps, on the grid of the step, up or down', () => {
    expect(found((x) => 100 - x, atMost(60)).fix).toBe('lever 40 brings 60');
    expect(found((x) => 100 - x, atMost(60.5)).fix).toBe('lever 40 brings 60');
    expect(found((x) => x, atLeast(25.2)).fix).toBe('lever 26 brings 26');
    expect(found((x) => x, atMost(5), { min: 1 }).fix).toBe('lever 5 brings 5');
    expect(found((x) => 50 - x, atLeast(45)).fix).toBe('lever 5 brings 45');
    // From 28.7 mm the next step of 1/16 in is 30.1625 mm, the next below 28.575.
    const step = 25.4 / 16;
    expect(found((x) => 100 - x, atMost(70.5), { now: 28.7, step }).fix).toBe('lever 30.1625 brings 69.8375');
    expect(found((x) => x, atMost(28.6), { now: 28.7, step }).fix).toBe('lever 28.575 brings 28.575');
  });

  it('is found where a lever gains less and less, or more and more', () => {
    const cases: readonly (readonly [Curve, number])[] = [
      [(x) => 1e6 / x ** 3, 20],
      [(x) => 1e6 / x ** 3, 3],
      [(x) => 400 - x ** 1.3, 60],
      [(x) => 1000 - x ** 2.5 / 100, 3],
      [(x) => Math.exp(-x / 9), 0.01],
      [(x) => 100 - Math.exp(x / 12), 2],
    ];
    for (const [curve, limit] of cases) {
      const { fix, tried } = found(curve, atMost(limit));
      const value = Number(/^lever (\S+)/.exec(fix!)![1]);
      expect(curve(value)).toBeLessThanOrEqual(limit);
      expect(curve(value - 1)).toBeGreaterThan(limit);
      expect(tried.length).toBeLessThanOrEqual(MOST_TRIES);
    }
  });

  it('is the least one of any falling or rising row, with few tries', () => {
    const falls = fc.array(fc.double({ min: 0.001, max: 1, noNaN: true }), { minLength: 20, maxLength: 400 });
    fc.assert(
      fc.property(falls, fc.double({ min: 0.01, max: 0.99, noNaN: true }), fc.boolean(), (row, share, rising) => {
        const sums = [0];
        for (const d of row) sums.push(sums.at(-1)! + d);
        const limit = sums.at(-1)! * share;
        const curve: Curve = (x) => (rising ? sums[x - 10]! : -sums[x - 10]!);
        const goal = rising ? atLeast(limit) : atMost(-limit);
        const { fix, tried } = found(curve, goal, { min: 10, max: 10 + row.length });
        const least = 10 + sums.findIndex((sum) => sum >= limit - 1e-6);
        expect(fix).toMatch(new RegExp(`^lever ${least} brings`));
        expect(tried.length).toBeLessThanOrEqual(MOST_TRIES);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('goes up to the very limit, and no further', () => {
    expect(found((x) => 100 - x, atMost(0)).fix).toBe('lever 100 brings 0');
    const { fix, tried } = found((x) => 100 - x, atMost(-1));
    expect(fix).toBeUndefined();
    expect(Math.max(...tried)).toBe(100);
    // From 18.9 steps to 20.1 steps: two whole steps lie between.
    expect(found((x) => 30 - x, atMost(10), { now: 18.9, max: 20.1 }).fix).toBe('lever 20 brings 10');
  });

  it('stops at once when a lever does nothing, either way', () => {
    expect(found(() => 7, atMost(5)).tried).toEqual([11, 9]);
  });

  it('stays inside what the rules allow', () => {
    const refused = (x: number): boolean => x > 37;
    expect(found((x) => 100 - x, atMost(63), { refused }).fix).toBe('lever 37 brings 63');
    expect(found((x) => 100 - x, atMost(70), { refused }).fix).toBe('lever 30 brings 70');
    const { fix, tried } = found((x) => 100 - x, atMost(62), { refused });
    expect(fix).toBeUndefined();
    expect(tried.length).toBeLessThanOrEqual(2 * MOST_TRIES);
    expect(found((x) => 100 - x, atMost(60), { refused: () => true }).tried).toEqual([11, 9]);
  });

  it('tries every one of a few steps: one may be refused where two are not', () => {
    const few = { now: 0, min: 0, max: 2 };
    const refused = (x: number): boolean => x === 1;
    expect(found((x) => (x > 0 ? 3 / x : undefined), atMost(2), { ...few, refused }).fix).toBe('lever 2 brings 1.5');
    expect(found((x) => (x > 0 ? 3 / x : undefined), atMost(1), { ...few, refused })).toEqual({
      fix: undefined,
      tried: [1, 2],
      fixes: [],
    });
  });

  it('is found in a valley: what gets better and then worse again', () => {
    const valley: Curve = (x) => Math.abs(x - 30) + 5;
    for (const limit of [5, 6, 9, 20]) {
      expect(found(valley, atMost(limit)).fix).toBe(`lever ${35 - limit} brings ${limit}`);
    }
    const { fix, tried } = found(valley, atMost(4));
    expect(fix).toBeUndefined();
    expect(tried.length).toBeLessThanOrEqual(2 * MOST_TRIES);
  });

  it('is found for what cannot be measured as it stands', () => {
    expect(found((x) => (x < 11 ? undefined : 3), atMost(5)).fix).toBe('lever 11 brings 3');
    expect(found((x) => (x < 11 ? undefined : 40 - x), atMost(5)).fix).toBe('lever 35 brings 5');
    expect(found(() => undefined, atMost(5)).fix).toBeUndefined();
  });

  it('measures the piece as it stands only when its value is not given', () => {
    const measured: string[] = [];
    const { context } = madeUp({ lever: LEVER });
    const goal: Goal = {
      measure: (c) => {
        measured.push(c.assembly.title);
        return 100 - (readLever(c)?.value ?? 10);
      },
      limit: 89,
      want: 'at most',
      levers: ['lever'],
      say: String,
    };
    expect(solvedFixes(context, goal, 90)).toEqual(['lever 11 brings 89']);
    expect(measured).toEqual(['value lever 11']);
  });
});

describe('several levers', () => {
  const levers = { a: LEVER, b: LEVER, c: LEVER, d: LEVER };
  const fixes = (order: readonly string[]) => {
    const { context, tries } = madeUp(levers);
    const told = solvedFixes(context, {
      measure: (c) => {
        const { path, value } = readLever(c) ?? { path: 'b', value: 10 };
        return path === 'a' ? 90 : 100 - value;
      },
      limit: 80,
      want: 'at most',
      levers: order,
      say: String,
    });
    return { told, tried: [...tries.keys()] };
  };

  it('are tried in their order, each alone; two that work are enough', () => {
    const { told, tried } = fixes(['a', 'b', 'c', 'd']);
    expect(told).toEqual(['b 20 brings 80', 'c 20 brings 80']);
    expect(tried).toEqual(['a', 'b', 'c']);
  });

  it('that the design does not have are passed over', () => {
    expect(fixes(['nowhere', 'd']).told).toEqual(['d 20 brings 80']);
    expect(solvedFixes({ ...madeUp(levers).context, tune: undefined } as never, {} as never)).toEqual([]);
  });
});
