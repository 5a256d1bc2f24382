import { describe, expect, test } from 'vitest';
import { lengthwiseSway } from '../../lib/derive/checks/solvers/frame-lengthwise.ts';
import type { Dof, SpaceFrame } from '../../lib/derive/checks/solvers/frame-model.ts';
import { railTwistStiffness, torsionConstant } from '../../lib/derive/checks/solvers/twist.ts';
import { CHERRY, READING_TABLE, solvedCase, type TrestleSizes, topPush, trestleBase } from './sample-bases.ts';

const HI = 326.6024e6;

/** The base with some nodes held in some more ways. */
function holding(frame: SpaceFrame, more: (name: string) => Dof[]): SpaceFrame {
  return { ...frame, nodes: frame.nodes.map((n) => ({ ...n, held: [...(n.held ?? []), ...more(n.name)] })) };
}

function sway(sizes: Partial<TrestleSizes>, railHeld: boolean): number {
  const base = trestleBase({ ...READING_TABLE, ...sizes });
  const nodes = (name: string): Dof[] => (railHeld ? (/knee|rail/.test(name) ? ['z'] : []) : []);
  return solvedCase(holding(base, nodes), topPush('along', [300, 0, 0])).moves.get('A left head')!.shift[0];
}

const inertia = (width: number, depth: number): number => (width * depth ** 3) / 12;

/** The same by the closed form. */
function closed(thickness: number, joint: number, stretchers: 1 | 2): number {
  const t = READING_TABLE;
  return lengthwiseSway({
    push: 300,
    height: t.height,
    span: t.span,
    stretcherHeight: t.stretcherHeight,
    stretchers,
    e: CHERRY.e,
    stretcherI: inertia(...t.stretcher),
    postsI: 2 * inertia(t.post[1], t.post[0]),
    joint,
    railTwist:
      stretchers === 2 ? Infinity : railTwistStiffness(CHERRY.g, torsionConstant(thickness, t.rail[1]), t.apart),
  }).sway;
}

const off = (got: number, expected: number): number => Math.abs(got / expected - 1);

describe('a push along the table, as a frame in space', () => {
  // Computed: closed form, seven digits.
  test.each([
    [38.1, READING_TABLE.stretcherJoint, 7.077753],
    [57.15, READING_TABLE.stretcherJoint, 3.328982],
    [69.85, READING_TABLE.stretcherJoint, 2.571599],
    [38.1, HI, 6.304174],
    [57.15, HI, 2.555404],
    [69.85, HI, 1.79802],
  ])('rail of %f mm that twists, joints %f: %f mm, the rail held upright', (thickness, stretcherJoint, expected) => {
    const got = sway({ rail: [thickness, 127], stretcherJoint }, true);
    expect(off(got, expected)).toBeLessThan(1e-6);
    expect(off(got, closed(thickness, stretcherJoint, 1))).toBeLessThan(1e-9);
  });

  test('a rail free to bend adds less than 0.1 %', () => {
    const [held, free] = [sway({}, true), sway({}, false)];
    expect(free / held - 1).toBeGreaterThan(0);
    expect(free / held - 1).toBeLessThan(0.001);
  });

  test.each([
    [READING_TABLE.stretcherJoint, 0.7759743],
    [HI, 0.3891848],
  ])('two stretchers from post to post, joints %f: %f mm', (stretcherJoint, expected) => {
    const got = sway({ to: 'posts', stretcherJoint }, true);
    expect(off(got, expected)).toBeLessThan(1e-6);
    expect(off(got, closed(0, stretcherJoint, 2))).toBeLessThan(1e-9);
  });

  test('asks 112.4 N m of each end of the stretcher and 56.2 N m of twist of each end of a rail', () => {
    const { ends } = solvedCase(trestleBase(READING_TABLE), topPush('along', [300, 0, 0]));
    expect(Math.abs(ends.get('stretcher')!.from.momentY) / 112_395).toBeCloseTo(1, 3);
    expect(Math.abs(ends.get('stretcher')!.to.momentY) / 112_395).toBeCloseTo(1, 3);
    expect(Math.abs(ends.get('A left rail')!.from.twist) / 56_197.5).toBeCloseTo(1, 3);
  });
});
