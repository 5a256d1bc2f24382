import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Dof, SpaceFrame } from '../../lib/derive/checks/solvers/frame-model.ts';
import { closedPortal, fixedPortal, hingedPortal, type Portal } from '../../lib/derive/checks/solvers/frame-portal.ts';
import { solvedCase } from './sample-bases.ts';

const RUN = { seed: 7_301, numRuns: 200 };

interface Feet {
  readonly rail: boolean;
  readonly held: readonly Dof[];
}

/** The portal as a plane frame in y and z that cannot stretch: equal pushes on both heads, heads held upright. */
function plane(p: Portal, { rail, held }: Feet): SpaceFrame {
  const out: Dof[] = ['x', 'ry', 'rz'];
  const material = { e: p.e, g: 1 };
  const section = (i: number) => ({ area: 1e4, iy: i, iz: i, j: 1e6 });
  const joint = { z: p.joint, y: p.joint };
  const post = { material, section: section(p.postI), z: [1, 0, 0] as const };
  const level = { material, section: section(p.railI), z: [0, 0, 1] as const, springs: { from: joint, to: joint } };
  return {
    nodes: [
      { name: 'foot 1', at: [0, 0, 0], held: [...out, ...held] },
      { name: 'foot 2', at: [0, p.span, 0], held: [...out, ...held] },
      { name: 'head 1', at: [0, 0, p.height], held: [...out, 'z'] },
      { name: 'head 2', at: [0, p.span, p.height], held: [...out, 'z'] },
    ],
    members: [
      { name: 'post 1', from: 'foot 1', to: 'head 1', ...post },
      { name: 'post 2', from: 'foot 2', to: 'head 2', ...post },
      { name: 'upper rail', from: 'head 1', to: 'head 2', ...level },
      ...(rail ? [{ name: 'lower rail', from: 'foot 1', to: 'foot 2', ...level }] : []),
    ],
  };
}

function solved(p: Portal, feet: Feet) {
  const half = [0, p.push / 2, 0] as const;
  const result = solvedCase(plane(p, feet), {
    name: 'push',
    loads: [
      { node: 'head 1', force: half },
      { node: 'head 2', force: half },
    ],
  });
  const [rail, post] = [result.ends.get('upper rail')!, result.ends.get('post 1')!];
  return {
    sway: result.moves.get('head 1')!.shift[1],
    joint: Math.abs(rail.from.momentY),
    foot: Math.hypot(post.from.momentY, post.from.momentZ),
  };
}

const portals = fc.record({
  push: fc.double({ min: 50, max: 1000, noNaN: true }),
  height: fc.double({ min: 300, max: 1100, noNaN: true }),
  span: fc.double({ min: 200, max: 1500, noNaN: true }),
  e: fc.double({ min: 5000, max: 16_000, noNaN: true }),
  postI: fc.double({ min: 1e5, max: 2e7, noNaN: true }),
  railI: fc.double({ min: 1e5, max: 2e7, noNaN: true }),
  joint: fc.oneof(fc.constant(Infinity), fc.double({ min: 1e6, max: 1e9, noNaN: true })),
});

describe('the frame solver and the closed forms of portals', () => {
  const near = (got: number, expected: number): void => expect(Math.abs(got / expected - 1)).toBeLessThan(1e-8);

  test('agree with hinged feet and joints of any stiffness', () => {
    fc.assert(
      fc.property(portals, (p) => {
        const [a, b] = [solved(p, { rail: false, held: ['y', 'z'] }), hingedPortal(p)];
        near(a.sway, b.sway);
        near(a.joint, b.jointMoment);
      }),
      RUN,
    );
  });

  test('agree with equal rails above and below', () => {
    fc.assert(
      fc.property(portals, (p) => {
        const [a, b] = [solved(p, { rail: true, held: ['y', 'z'] }), closedPortal(p)];
        near(a.sway, b.sway);
        near(a.joint, b.jointMoment);
      }),
      RUN,
    );
  });

  test('agree with feet that cannot turn', () => {
    fc.assert(
      fc.property(portals, (some) => {
        const p = { ...some, joint: Infinity };
        const [a, b] = [solved(p, { rail: false, held: ['y', 'z', 'rx'] }), fixedPortal(p)];
        near(a.sway, b.sway);
        near(a.joint, b.jointMoment);
        near(a.foot, b.footMoment);
      }),
      RUN,
    );
  });
});
