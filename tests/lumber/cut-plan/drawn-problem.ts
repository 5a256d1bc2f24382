import type { CutProblem } from '../../../lib/derive/lumber/cut-plan/cut-problem.ts';
import { seeded } from '../../../lib/derive/lumber/strip-plan/seeded.ts';

/** A job drawn by lot: so many parts of so many sizes, boards of `plenty` times their area, zones on every third. */
export function drawnProblem(parts: number, types: number, seed: number, plenty = 1.4): CutProblem {
  const next = seeded(seed * 7919 + parts);
  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  const counts = Array.from({ length: types }, () => 1);
  for (let n = types; n < parts; n++) counts[whole(0, types - 1)]!++;
  const sizes = counts.map((count, i) => ({
    id: `P${i + 1}`,
    length: whole(250, 1400),
    width: whole(35, 140),
    count,
  }));
  const need = sizes.reduce((sum, p) => sum + p.count * p.length * p.width, 0);
  const boards: CutProblem['boards'][number][] = [];
  for (let area = 0; area < need * plenty; ) {
    const [length, width] = [whole(1800, 3600), whole(110, 280)];
    area += length * width;
    const [from, near] = [whole(0, length - 200), whole(0, width - 40)];
    const zone = { from, to: from + whole(30, 200), near, far: near + whole(15, 40) };
    const avoid = next() < 0.3 ? [zone] : [];
    boards.push({ id: `B${boards.length + 1}`, length, width, cost: (length * width * 27) / 1e6, avoid });
  }
  return { parts: sizes, boards, kerf: 3 };
}
