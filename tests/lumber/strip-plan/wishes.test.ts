import { describe, expect, test } from 'vitest';
import { checkStripPlan } from '../../../lib/derive/lumber/strip-plan/check-strip-plan.ts';
import { STRIP_ORDER } from '../../../lib/derive/lumber/strip-plan/strip-settings.ts';
import { randomPile } from './random-boards.ts';
import { solved } from './solved.ts';

describe('what the maker asks for', () => {
  const problem = randomPile({ seed: 12, boards: 16, strips: 6 });

  test('pinned boards stay, the rest is planned round them, at a price', () => {
    const free = solved(problem);
    const pins = [
      { mark: '07', strip: 3, layer: 'show', faceUp: 'B' },
      { mark: '02', layer: 'bottom' },
    ] as const;
    const { plan, done } = solved({ ...problem, pins });
    expect(done).toBe(true);
    expect(plan!.strips[2]!.show).toMatchObject({ mark: '07', faceUp: 'B' });
    expect(plan!.strips.map((s) => s.bottom?.mark)).toContain('02');
    expect(checkStripPlan({ ...problem, pins }, plan!)).toEqual([]);
    expect(plan!.value).toBeGreaterThanOrEqual(free.plan!.value - 1e-6);
  });

  test('a seam on the center line', () => {
    const centered = { ...problem, settings: { ...problem.settings, seamOnCenterLine: true } };
    const { plan } = solved(centered, {}, 300_000);
    expect(checkStripPlan(centered, plan!)).toEqual([]);
    expect(Math.min(...plan!.strips.map(({ from }) => Math.abs(from)))).toBeLessThan(1e-6);
  });

  test('terms in order: the first decides, whatever the others cost', () => {
    const small = randomPile({ seed: 5, boards: 9, strips: 4 });
    const first = (order: typeof STRIP_ORDER) => {
      const settings = { ...small.settings, preference: { mode: 'ordered', order } as const };
      const status = solved({ ...small, settings });
      expect(status.done).toBe(true);
      return status.plan!.terms;
    };
    const byReserve = first(STRIP_ORDER);
    const byVolume = first(['volume', ...STRIP_ORDER.filter((term) => term !== 'volume')]);
    const byTone = first(['tone', ...STRIP_ORDER.filter((term) => term !== 'tone')]);
    expect(byVolume.volume).toBeLessThanOrEqual(Math.min(byReserve.volume, byTone.volume) + 1e-9);
    expect(byTone.tone).toBeLessThanOrEqual(Math.min(byReserve.tone, byVolume.tone) + 1e-9);
    expect(byReserve.reserve).toBeLessThanOrEqual(Math.min(byVolume.reserve, byTone.reserve) + 1e-9);
  });
});
