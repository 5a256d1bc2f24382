import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthwiseSway } from '../../lib/derive/checks/solvers/frame-lengthwise.ts';
import type { SpaceFrame } from '../../lib/derive/checks/solvers/frame-model.ts';
import { hingedPortal } from '../../lib/derive/checks/solvers/frame-portal.ts';
import { turnStiffness } from '../../lib/derive/checks/solvers/frame-springs.ts';
import { jointStiffness } from '../../lib/derive/checks/solvers/joint-stiffness.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import { loadOn, randomFrames, randomLoads } from './random-frames.ts';
import { solvedCase, type TrestleSizes, topPush, trestleBase } from './sample-bases.ts';

const RUN = { seed: 7_304, numRuns: 100 };
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const bases: fc.Arbitrary<TrestleSizes> = fc.record({
  height: mm(650, 800),
  span: mm(600, 2400),
  apart: mm(300, 800),
  stretcherHeight: mm(150, 600),
  post: fc.tuple(mm(40, 100), mm(40, 100)),
  bearer: fc.tuple(mm(30, 80), mm(50, 120)),
  rail: fc.tuple(mm(25, 80), mm(60, 160)),
  stretcher: fc.tuple(mm(25, 60), mm(60, 160)),
  to: fc.constantFrom<'posts' | 'rail'>('posts', 'rail'),
  stretcherJoint: mm(5e6, 5e8),
  postJoint: mm(5e6, 5e8),
});

const PUSHES: readonly Vec3[] = [
  [300, 0, 0],
  [0, 300, 0],
];

/** Twice the work of a push: what it moves, over itself. */
function give(frame: SpaceFrame, push: Vec3): number {
  const load = topPush('push', push);
  const { moves } = solvedCase(frame, load);
  return load.loads.reduce(
    (sum, l) => sum + l.force![0] * moves.get(l.node)!.shift[0] + l.force![1] * moves.get(l.node)!.shift[1],
    0,
  );
}

describe('a base', () => {
  test.each([
    ['stiffer stretcher joints', (t: TrestleSizes, f: number) => ({ ...t, stretcherJoint: t.stretcherJoint * f })],
    ['stiffer post joints', (t: TrestleSizes, f: number) => ({ ...t, postJoint: t.postJoint * f })],
    ['thicker rails', (t: TrestleSizes, f: number) => ({ ...t, rail: [t.rail[0] * f, t.rail[1]] as const })],
    ['thicker posts', (t: TrestleSizes, f: number) => ({ ...t, post: [t.post[0] * f, t.post[1]] as const })],
    [
      'deeper stretchers',
      (t: TrestleSizes, f: number) => ({ ...t, stretcher: [t.stretcher[0], t.stretcher[1] * f] as const }),
    ],
  ])('never sways more with %s', (_, stiffer) => {
    fc.assert(
      fc.property(bases, mm(1, 3), (t, factor) => {
        const [before, after] = [trestleBase(t), trestleBase(stiffer(t, factor))];
        for (const push of PUSHES) expect(give(after, push)).toBeLessThanOrEqual(give(before, push) * (1 + 1e-8));
      }),
      RUN,
    );
  });

  test('goes as far one way as the other, and twice as far under twice the push', () => {
    fc.assert(
      fc.property(bases, (t) => {
        const base = trestleBase(t);
        const at = (x: number): number => solvedCase(base, topPush('p', [x, 0, 0])).moves.get('B left head')!.shift[0];
        expect(at(-300) + at(300)).toBe(0);
        expect(at(600) / at(300)).toBeCloseTo(2, 9);
      }),
      RUN,
    );
  });

  test('whose left side mirrors its right moves alike on both, pushed along', () => {
    fc.assert(
      fc.property(bases, (t) => {
        // Held alike on both sides, unlike feet on a floor.
        const plain = trestleBase(t);
        const nodes = plain.nodes.map((n) => (n.name.endsWith('foot') ? { ...n, held: ['x', 'y', 'z'] as const } : n));
        const { moves, ends } = solvedCase({ ...plain, nodes }, topPush('along', [300, 0, 0]));
        for (const f of ['A', 'B']) {
          const [left, right] = [moves.get(`${f} left head`)!, moves.get(`${f} right head`)!];
          expect(left.shift[0] / right.shift[0]).toBeCloseTo(1, 9);
          expect(Math.abs(left.shift[1] + right.shift[1])).toBeLessThan(1e-8);
          expect(left.turn[1] / right.turn[1]).toBeCloseTo(1, 8);
          const post = (side: string) => ends.get(`${f} ${side} lower post`)!.to;
          expect(post('left').axial).toBeCloseTo(post('right').axial, 5);
        }
      }),
      RUN,
    );
  });

  test('does not care in which order its pieces are told', () => {
    fc.assert(
      fc.property(randomFrames, randomLoads, (frame, loads) => {
        const load = loadOn(frame, loads);
        const turned = { nodes: [...frame.nodes].reverse(), members: [...frame.members].reverse() };
        const [a, b] = [solvedCase(frame, load).moves, solvedCase(turned, load).moves];
        const most = Math.max(1e-6, ...[...a.values()].flatMap((m) => m.shift.map(Math.abs)));
        for (const [name, m] of a) {
          m.shift.forEach((x, k) => {
            expect(Math.abs(x - b.get(name)!.shift[k]!) / most).toBeLessThan(1e-6);
          });
        }
      }),
      RUN,
    );
  });

  test('does not care which end of a member is called the first', () => {
    fc.assert(
      fc.property(bases, (t) => {
        const base = trestleBase(t);
        const members = base.members.map((m) => ({
          ...m,
          from: m.to,
          to: m.from,
          ...(m.springs ? { springs: { from: m.springs.to ?? {}, to: m.springs.from ?? {} } } : {}),
        }));
        for (const push of PUSHES) expect(give({ ...base, members }, push) / give(base, push)).toBeCloseTo(1, 8);
      }),
      RUN,
    );
  });
});

describe('a member with springs', () => {
  // Textbook: 4, 2, 3 EI/L.
  test('is the plain beam when they are rigid, and a propped one with a hinge', () => {
    expect(turnStiffness(100, Infinity, Infinity)).toEqual({ near: 400, far: 400, cross: 200 });
    expect(turnStiffness(100, Infinity, 0)).toEqual({ near: 300, far: 0, cross: 0 });
    expect(turnStiffness(100, 0, 0)).toEqual({ near: 0, far: 0, cross: 0 });
  });

  test('comes near the rigid one as its springs stiffen', () => {
    expect(turnStiffness(100, 1e12, 1e12).near).toBeCloseTo(400, 6);
    expect(turnStiffness(100, 1e-9, Infinity).near).toBeLessThan(1e-8);
  });
});

describe('closed forms', () => {
  const table = { push: 300, height: 749, span: 1422, stretcherHeight: 406, stretchers: 1, e: 10_300 };
  const positive = mm(1e6, 1e9);

  test('never sway more with stiffer joints, or a stiffer rail', () => {
    fc.assert(
      fc.property(positive, positive, mm(1, 10), (joint, railTwist, f) => {
        const base = { ...table, stretcherI: 6.5e6, postsI: 4.7e6, joint, railTwist };
        const sway = lengthwiseSway(base).sway;
        expect(lengthwiseSway({ ...base, joint: joint * f }).sway).toBeLessThanOrEqual(sway);
        expect(lengthwiseSway({ ...base, railTwist: railTwist * f }).sway).toBeLessThanOrEqual(sway);
        const portal = { push: 150, height: 749, span: 508, e: 10_300, postI: 3.3e6, railI: 1.5e6, joint };
        expect(hingedPortal({ ...portal, joint: joint * f }).sway).toBeLessThanOrEqual(hingedPortal(portal).sway);
      }),
      { seed: 7_305, numRuns: 300 },
    );
  });

  test('joint stiffness grows with thickness and with the square of the depth', () => {
    const joint = { grip: 0.15, across: 885.8, thickness: 38.1, depth: 127 };
    const k = jointStiffness(joint);
    expect(jointStiffness({ ...joint, thickness: 76.2 }) / k).toBeCloseTo(2, 12);
    expect(jointStiffness({ ...joint, depth: 254 }) / k).toBeCloseTo(4, 12);
    expect(() => jointStiffness({ ...joint, across: 0 })).toThrow('E across is 0 MPa; it must be above 0 MPa');
  });
});
