import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LoadCase, SpaceFrame } from '../../lib/derive/checks/solvers/frame-model.ts';
import type { CaseResult } from '../../lib/derive/checks/solvers/frame-result.ts';
import { solveFrame } from '../../lib/derive/checks/solvers/frame-solve.ts';
import { add, cross, length, type Vec3 } from '../../lib/geometry/vec.ts';
import { loadOn, randomFrames, randomLoads } from './random-frames.ts';
import { READING_TABLE, solvedCase, topPush, trestleBase } from './sample-bases.ts';

const RUN = { seed: 7_303, numRuns: 150 };
const ZERO: Vec3 = [0, 0, 0];

/** Sum of loads and reactions: force, and moment about the origin. */
function unbalance(frame: SpaceFrame, load: LoadCase, result: CaseResult): { force: number; moment: number } {
  const at = new Map(frame.nodes.map((n) => [n.name, n.at]));
  const all = [
    ...load.loads.map((l) => ({ node: l.node, force: l.force ?? ZERO, moment: l.moment ?? ZERO })),
    ...[...result.reactions].map(([node, r]) => ({ node, ...r })),
  ];
  const force = all.reduce<Vec3>((sum, l) => add(sum, l.force), ZERO);
  const moment = all.reduce<Vec3>((sum, l) => add(add(sum, l.moment), cross(at.get(l.node)!, l.force)), ZERO);
  return { force: length(force), moment: length(moment) };
}

describe('what holds a frame', () => {
  test('balances what pushes it', () => {
    fc.assert(
      fc.property(randomFrames, randomLoads, (frame, loads) => {
        const load = loadOn(frame, loads);
        const { force, moment } = unbalance(frame, load, solvedCase(frame, load));
        expect(force).toBeLessThan(1e-5);
        expect(moment).toBeLessThan(1e-2);
      }),
      RUN,
    );
  });

  test('balances a reading-room table: 1000 N down is 1000 N up', () => {
    const load = topPush('down', [0, 0, -1000]);
    const { reactions } = solvedCase(trestleBase(READING_TABLE), load);
    const up = [...reactions.values()].reduce((sum, r) => sum + r.force[2], 0);
    expect(up).toBeCloseTo(1000, 6);
  });

  test('takes loads right on a held node', () => {
    const base = trestleBase(READING_TABLE);
    const { reactions, moves } = solvedCase(base, { name: 'foot', loads: [{ node: 'A left foot', force: [1, 2, 3] }] });
    expect(reactions.get('A left foot')!.force).toEqual([-1, -2, -3]);
    expect(Math.max(...[...moves.values()].map((m) => length(m.shift)))).toBe(0);
  });
});

describe('every member', () => {
  test('is in balance on its own', () => {
    fc.assert(
      fc.property(randomFrames, randomLoads, (frame, loads) => {
        const { ends } = solvedCase(frame, loadOn(frame, loads));
        for (const { from, to } of ends.values()) {
          expect(Math.abs(from.axial + to.axial)).toBeLessThan(1e-5);
          expect(Math.abs(from.shearY + to.shearY)).toBeLessThan(1e-5);
          expect(Math.abs(from.shearZ + to.shearZ)).toBeLessThan(1e-5);
          expect(Math.abs(from.twist + to.twist)).toBeLessThan(1e-3);
        }
      }),
      RUN,
    );
  });

  test('has no moment at a hinge', () => {
    const { ends } = solvedCase(trestleBase(READING_TABLE), topPush('along', [300, 0, 0]));
    expect(Math.abs(ends.get('left top')!.from.momentY)).toBeLessThan(1e-6);
  });
});

describe('load cases', () => {
  test('solved together are the same as solved alone, and add up', () => {
    const base = trestleBase(READING_TABLE);
    const cases = [topPush('along', [300, 0, 0]), topPush('across', [0, 300, 0]), topPush('both', [300, 300, 0])];
    const result = solveFrame(base, cases);
    if (result.kind !== 'solved') throw new Error('loose');
    const at = (k: number): Vec3 => result.cases[k]!.moves.get('A left head')!.shift;
    cases.forEach((load, k) => {
      expect(result.cases[k]!.name).toBe(load.name);
      expect(at(k)).toEqual(solvedCase(base, load).moves.get('A left head')!.shift);
    });
    const sum = add(at(0), at(1));
    for (const k of [0, 1, 2] as const) expect(sum[k]).toBeCloseTo(at(2)[k], 9);
  });

  test('work on each other alike: what A does where B pushes is what B does where A pushes', () => {
    fc.assert(
      fc.property(randomFrames, randomLoads, randomLoads, (frame, one, other) => {
        const [a, b] = [loadOn(frame, [one[0], ZERO, one[2], 0]), loadOn(frame, [other[0], ZERO, other[2], 0])];
        const [ab, ba] = [work(a, solvedCase(frame, b)), work(b, solvedCase(frame, a))];
        expect(Math.abs(ab - ba)).toBeLessThan(1e-7 * (1 + Math.abs(ab)));
      }),
      RUN,
    );
  });
});

function work({ loads }: LoadCase, { moves }: CaseResult): number {
  return loads.reduce((sum, { node, force = ZERO }) => {
    const { shift } = moves.get(node)!;
    return sum + force[0] * shift[0] + force[1] * shift[1] + force[2] * shift[2];
  }, 0);
}
