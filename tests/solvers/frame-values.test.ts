import { describe, expect, test } from 'vitest';
import { lengthwiseSway } from '../../lib/derive/checks/solvers/frame-lengthwise.ts';
import { closedPortal, fixedPortal, hingedPortal } from '../../lib/derive/checks/solvers/frame-portal.ts';
import { swayFrequency } from '../../lib/derive/checks/solvers/frame-sway.ts';
import { GLUED_GRIP, jointStiffness } from '../../lib/derive/checks/solvers/joint-stiffness.ts';
import { railTwistStiffness, torsionConstant } from '../../lib/derive/checks/solvers/twist.ts';
import { testValues } from './check-values.ts';

// Black cherry: E_L 10,300 MPa, E_T 0.086 and G_LT 0.097 of it. Posts 69.85 mm along the table, 82.55 across; stretcher
// 38.1 x 127; bearer 57.15 x 67.46875 at the V; cross rails 127 deep between post axes 508 mm apart.
const E = 10_300;
const ET = 0.086 * E;
const G = 0.097 * E;
const inertia = (width: number, depth: number): number => (width * depth ** 3) / 12;

const stretcherJoint = (grip: number): number => jointStiffness({ grip, across: ET, thickness: 38.1, depth: 127 });
const bearerJoint = (grip: number): number => jointStiffness({ grip, across: ET, thickness: 57.15, depth: 82.55 });
const [lo, hi] = [stretcherJoint(GLUED_GRIP.value.low), stretcherJoint(GLUED_GRIP.value.high)];
const posts = 2 * inertia(82.55, 69.85);
const turned = 2 * inertia(69.85, 82.55);
const along = { push: 300, height: 749.3, span: 1422.4, stretcherHeight: 406.4, e: E, stretcherI: inertia(38.1, 127) };
const across = {
  push: 150,
  height: 749.3,
  span: 508,
  e: E,
  postI: inertia(69.85, 82.55),
  railI: inertia(57.15, 67.46875),
};
const portal = { push: 300, height: 700, span: 600, e: 11_000, postI: inertia(60, 60), railI: inertia(30, 90) };

describe('stiffness of joints, rails and frames', () => {
  testValues([
    {
      source: 'beta E_T b d^2, beta 0.15',
      status: 'computed',
      unit: 'kN m/rad',
      tolerance: { rel: 1e-6 },
      rows: [['demo.C.k.stretcher.lo', 81.65059, () => lo / 1e6]],
    },
    {
      source: 'beta 0.6',
      status: 'computed',
      unit: 'kN m/rad',
      tolerance: { rel: 1e-6 },
      rows: [['demo.C.k.stretcher.hi', 326.6024, () => hi / 1e6]],
    },
    {
      source: 'closed form, frame solve agrees',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.C.along.noTwist.1stretcher.lo',
          1.440716,
          () => lengthwiseSway({ ...along, stretchers: 1, postsI: posts, joint: lo, railTwist: Infinity }).sway,
        ],
        [
          'demo.C.along.noTwist.1stretcher.hi',
          0.6671369,
          () => lengthwiseSway({ ...along, stretchers: 1, postsI: posts, joint: hi, railTwist: Infinity }).sway,
        ],
        ['ind.C.portal.pinned', 1.810232, () => hingedPortal({ ...portal, joint: Infinity }).sway],
        ['ind.C.portal.pinnedSprings', 10.99773, () => hingedPortal({ ...portal, joint: 8e6 }).sway],
        ['ind.C.trestleClosed', 5.137965, () => closedPortal({ ...portal, joint: 8e6 }).sway],
      ],
    },
    {
      source: 'closed form, no twist',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.C.along.noTwist.2stretcher.lo',
          0.7759743,
          () => lengthwiseSway({ ...along, stretchers: 2, postsI: posts, joint: lo, railTwist: Infinity }).sway,
        ],
        [
          'demo.C.along.noTwist.2stretcher.hi',
          0.3891848,
          () => lengthwiseSway({ ...along, stretchers: 2, postsI: posts, joint: hi, railTwist: Infinity }).sway,
        ],
      ],
    },
    {
      source: 'closed form',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.C.along.noTwist.postsTurned.lo',
          1.409123,
          () => lengthwiseSway({ ...along, stretchers: 1, postsI: turned, joint: lo, railTwist: Infinity }).sway,
        ],
        [
          'demo.C.along.noTwist.postsTurned.hi',
          0.6355441,
          () => lengthwiseSway({ ...along, stretchers: 1, postsI: turned, joint: hi, railTwist: Infinity }).sway,
        ],
      ],
    },
    {
      source: 'closed form, frame solve agrees with the rail held',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.C.along.crossRailTwist.rail38.1.lo',
          7.077753,
          () =>
            lengthwiseSway({
              ...along,
              stretchers: 1,
              postsI: posts,
              joint: lo,
              railTwist: railTwistStiffness(G, torsionConstant(38.1, 127), 508),
            }).sway,
        ],
        [
          'demo.C.along.crossRailTwist.rail57.15.lo',
          3.328982,
          () =>
            lengthwiseSway({
              ...along,
              stretchers: 1,
              postsI: posts,
              joint: lo,
              railTwist: railTwistStiffness(G, torsionConstant(57.15, 127), 508),
            }).sway,
        ],
        [
          'demo.C.along.crossRailTwist.rail69.85.lo',
          2.571599,
          () =>
            lengthwiseSway({
              ...along,
              stretchers: 1,
              postsI: posts,
              joint: lo,
              railTwist: railTwistStiffness(G, torsionConstant(69.85, 127), 508),
            }).sway,
        ],
        [
          'demo.C.along.crossRailTwist.rail38.1.hi',
          6.304174,
          () =>
            lengthwiseSway({
              ...along,
              stretchers: 1,
              postsI: posts,
              joint: hi,
              railTwist: railTwistStiffness(G, torsionConstant(38.1, 127), 508),
            }).sway,
        ],
        [
          'demo.C.along.crossRailTwist.rail57.15.hi',
          2.555404,
          () =>
            lengthwiseSway({
              ...along,
              stretchers: 1,
              postsI: posts,
              joint: hi,
              railTwist: railTwistStiffness(G, torsionConstant(57.15, 127), 508),
            }).sway,
        ],
        [
          'demo.C.along.crossRailTwist.rail69.85.hi',
          1.79802,
          () =>
            lengthwiseSway({
              ...along,
              stretchers: 1,
              postsI: posts,
              joint: hi,
              railTwist: railTwistStiffness(G, torsionConstant(69.85, 127), 508),
            }).sway,
        ],
      ],
    },
    {
      source: '4 G J/L_r, short formula for J',
      status: 'computed',
      unit: 'kN m/rad',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.C.k.crossRailTwist.rail38.1',
          14.94004,
          () => railTwistStiffness(G, torsionConstant(38.1, 127), 508) / 1e6,
        ],
        [
          'demo.C.k.crossRailTwist.rail57.15',
          44.60047,
          () => railTwistStiffness(G, torsionConstant(57.15, 127), 508) / 1e6,
        ],
        [
          'demo.C.k.crossRailTwist.rail69.85',
          74.47061,
          () => railTwistStiffness(G, torsionConstant(69.85, 127), 508) / 1e6,
        ],
      ],
    },
    {
      source: 'H h/2 for one stretcher; frame solve agrees',
      status: 'computed',
      unit: 'N m',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.C.jointMoment.stretcher',
          112.395,
          () =>
            lengthwiseSway({ ...along, stretchers: 1, postsI: posts, joint: lo, railTwist: Infinity }).jointMoment /
            1000,
        ],
      ],
    },
    {
      source: 'beta E_T b d^2',
      status: 'computed',
      unit: 'kN m/rad',
      tolerance: { rel: 1e-6 },
      rows: [
        ['demo.C.k.postBearer.lo', 51.74606, () => bearerJoint(GLUED_GRIP.value.low) / 1e6],
        ['demo.C.k.postBearer.hi', 206.9843, () => bearerJoint(GLUED_GRIP.value.high) / 1e6],
      ],
    },
    {
      source: 'closed form, feet free to turn',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.C.across.lo',
          1.362249,
          () => hingedPortal({ ...across, joint: bearerJoint(GLUED_GRIP.value.low) }).sway,
        ],
        [
          'demo.C.across.hi',
          0.75193,
          () => hingedPortal({ ...across, joint: bearerJoint(GLUED_GRIP.value.high) }).sway,
        ],
      ],
    },
    {
      source: 'H_frame h/2',
      status: 'computed',
      unit: 'N m',
      tolerance: { rel: 1e-6 },
      rows: [
        [
          'demo.C.jointMoment.postBearer',
          56.1975,
          () => hingedPortal({ ...across, joint: Infinity }).jointMoment / 1000,
        ],
      ],
    },
    {
      source: 'Kleinlogel, Rahmenformeln',
      status: 'memory',
      unit: 'mm',
      tolerance: { rel: 1e-6 },
      rows: [['ind.C.portal.fixed', 0.4454043, () => fixedPortal(portal).sway]],
    },
    {
      source: 'series for a rectangle; short formula gives 0.140833',
      status: 'computed',
      unit: 'J/a^4',
      tolerance: { rel: 0.002 },
      rows: [['ind.C.torsion.square', 0.140577, () => torsionConstant(1, 1)]],
    },
    {
      source: 'series; short formula gives 1899094',
      status: 'computed',
      unit: 'mm4',
      tolerance: { rel: 0.0005 },
      rows: [['ind.C.torsion.38x127', 1898646, () => torsionConstant(38.1, 127)]],
    },
    {
      source: 'sqrt(K/m)/2pi, K = 300 N/1.440716 mm, m = top; information only',
      status: 'computed',
      unit: 'Hz',
      tolerance: { rel: 0.0001 },
      rows: [['demo.C.frequency', 10.068, () => swayFrequency(300 / 1.440716, 52.03221)]],
    },
  ]);
});

describe('closed forms', () => {
  test('say what gives: of 7 mm along the table the thin cross rail gives most', () => {
    const railTwist = railTwistStiffness(G, torsionConstant(38.1, 127), 508);
    const s = lengthwiseSway({ ...along, stretchers: 1, postsI: posts, joint: lo, railTwist });
    expect(s.stretchers + s.joints + s.railTwist + s.posts).toBeCloseTo(s.sway, 12);
    expect(s.railTwist / s.sway).toBeGreaterThan(0.75);
    expect(s.railTorque).toBeCloseTo(56_197.5, 6);
  });

  test('without a stretcher nothing holds lengthwise', () => {
    expect(lengthwiseSway({ ...along, stretchers: 0, postsI: posts, joint: lo, railTwist: Infinity }).sway).toBe(
      Infinity,
    );
  });
});
