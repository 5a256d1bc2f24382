import { describe, expect, test } from 'vitest';
import type { StripMend } from '../../../lib/derive/lumber/strip-plan/explain-infeasible.ts';
import { explainInfeasible } from '../../../lib/derive/lumber/strip-plan/explain-infeasible.ts';
import type { StripProblem } from '../../../lib/derive/lumber/strip-plan/strip-problem.ts';
import { randomPile } from './random-boards.ts';
import { solved } from './solved.ts';

const change = (problem: StripProblem, mend: StripMend): StripProblem => {
  const by = mend.by ?? 0;
  const boards = problem.boards.map((b) => {
    if (b.mark !== mend.mark) return b;
    return mend.change === 'board wider' ? { ...b, width: b.width + by } : { ...b, thickness: b.thickness + by };
  });
  const strips = (more: number) => ({
    ...problem,
    settings: { ...problem.settings, strips: problem.settings.strips + more },
  });
  if (mend.change === 'board wider' || mend.change === 'board thicker') return { ...problem, boards };
  if (mend.change === 'top narrower') return { ...problem, width: problem.width - by };
  if (mend.change === 'one strip more') return strips(1);
  if (mend.change === 'one strip less') return strips(-1);
  if (mend.change === 'without the pins') return { ...problem, pins: [] };
  if (mend.change === 'seam off the center line') {
    return { ...problem, settings: { ...problem.settings, seamOnCenterLine: false } };
  }
  return { ...problem, centerThickness: problem.centerThickness - by };
};

describe('no plan', () => {
  test('is not claimed where there is one', () => {
    expect(explainInfeasible(randomPile({ seed: 2, boards: 10, strips: 4 }))).toBeUndefined();
  });

  test('too few boards', () => {
    const pile = randomPile({ seed: 2, boards: 3, strips: 4 });
    expect(explainInfeasible(pile)).toMatchObject({ what: 'boards too few', value: 3, wanted: 4 });
  });

  test('too narrow: by how much, and every mend mends', () => {
    const pile = randomPile({ seed: 2, boards: 8, strips: 4, settings: { layers: 'two' } });
    const short = { ...pile, boards: pile.boards.map((b) => ({ ...b, width: b.width - 22 })) };
    const told = explainInfeasible(short)!;
    const pairs = short.boards.map((b) => b.width).sort((a, b) => b - a);
    const most = pairs[1]! + pairs[3]! + pairs[5]! + pairs[7]! - 8 * 0.79375;
    expect(told.what).toBe('width');
    expect(told.value).toBeCloseTo(most, 6);
    expect(told.wanted).toBeCloseTo(4 * 127 + 3.175 + 2 * 0.79375 + 2 * 3.175, 6);
    expect(told.mends.length).toBeGreaterThan(0);
    for (const mend of told.mends) expect(solved(change(short, mend)).plan, mend.change).toBeDefined();
  });

  test('too thin: every mend mends, and half of a lengthwise one does not', () => {
    const pile = randomPile({ seed: 3, boards: 8, strips: 4, thinner: 6, settings: { layers: 'two' } });
    const thin = { ...pile, boards: pile.boards.map((b) => ({ ...b, thickness: Math.min(b.thickness, 27.5) })) };
    const told = explainInfeasible(thin)!;
    expect(told.what).toBe('thickness');
    expect(told.mends.map((m) => m.change)).toContain('top thinner on the center line');
    for (const mend of told.mends) expect(solved(change(thin, mend)).plan, mend.change).toBeDefined();
    const lower = told.mends.find((m) => m.change === 'top thinner on the center line')!;
    expect(solved(change(thin, { ...lower, by: lower.by! - 25.4 / 16 })).plan).toBeUndefined();
  });
});
