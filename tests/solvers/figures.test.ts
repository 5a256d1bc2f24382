import { expect, test } from 'vitest';
import { HANDBOOK_PRESSURE, JAW_GRIP, USUAL_PRESSURE } from '../../lib/derive/checks/solvers/clamps.ts';
import { LEVEL_PUSH, SWAY_LIMITS } from '../../lib/derive/checks/solvers/frame-sway.ts';
import { LOOSE_TENON, ROUND_ENDS } from '../../lib/derive/checks/solvers/joint-factors.ts';
import { LEAST_LOWER_SHOULDER, MOST_ACROSS_GRAIN, TESTED_RANGE } from '../../lib/derive/checks/solvers/joint-range.ts';
import { DRY_GRIP, GLUED_GRIP } from '../../lib/derive/checks/solvers/joint-stiffness.ts';
import { OFTEN_LIMITS, ONCE_LIMIT } from '../../lib/derive/checks/solvers/joint-use.ts';
import { LEAST_SCREWS_A_FRAME, LIFT_FACTOR } from '../../lib/derive/checks/solvers/lift-off.ts';
import {
  LIFTING_INCH,
  LIFTING_METRIC,
  PERSON_LIFT,
  TEAM_SHARE,
  TURNING_LOSS,
} from '../../lib/derive/checks/solvers/lifting.ts';
import type { Basis, Figure } from '../../lib/derive/checks/solvers/ours.ts';
import { FLOOR_FRICTION } from '../../lib/derive/checks/solvers/slide.ts';
import { SLOT_PLAY, USUAL_MOISTURE } from '../../lib/derive/checks/solvers/slot.ts';
import { LEAST_THREAD, SCREW_COVER } from '../../lib/derive/checks/solvers/thread-room.ts';
import { TIP_LIMITS } from '../../lib/derive/checks/solvers/tip.ts';
import { ALLOWABLE_WITHDRAWAL_FACTOR } from '../../lib/derive/checks/solvers/withdrawal.ts';
import { DURATION, RESERVE, STRESS_BANDS, VARIATION } from '../../lib/derive/checks/solvers/working-stress.ts';

const FIGURES: readonly (readonly [Basis, Figure<unknown>, unknown])[] = [
  ['read', HANDBOOK_PRESSURE, { light: 0.69, dense: 1.7 }],
  ['ours', USUAL_PRESSURE, 1.2],
  ['ours', JAW_GRIP, { doubt: 0.1, slides: 0.2 }],
  ['read', LEVEL_PUSH, 300],
  ['ours', SWAY_LIMITS, { solid: 3, some: 8 }],
  ['ours', LOOSE_TENON, 0.75],
  ['read', ROUND_ENDS, 0.87],
  ['read', TESTED_RANGE, { depth: [15, 50], height: [20, 50] }],
  ['ours', MOST_ACROSS_GRAIN, 75],
  ['ours', LEAST_LOWER_SHOULDER, 5],
  ['computed', GLUED_GRIP, { low: 0.15, high: 0.6 }],
  ['ours', DRY_GRIP, 0.015],
  ['ours', OFTEN_LIMITS, { ok: 0.4, least: 0.65 }],
  ['ours', ONCE_LIMIT, 0.65],
  ['ours', LIFT_FACTOR, 2],
  ['ours', LEAST_SCREWS_A_FRAME, 4],
  ['read', PERSON_LIFT, 25],
  ['read', TEAM_SHARE, { 1: 1, 2: 2 / 3, 3: 0.5 }],
  ['read', LIFTING_METRIC, LIFTING_METRIC.value],
  ['read', LIFTING_INCH, LIFTING_INCH.value],
  ['memory', TURNING_LOSS, 0.0032],
  ['ours', FLOOR_FRICTION, { low: 0.3, usual: 0.4, high: 0.5 }],
  ['ours', USUAL_MOISTURE, { fitting: 7.5, low: 5, high: 11 }],
  ['ours', SLOT_PLAY, 1.5875],
  ['ours', SCREW_COVER, 9.525],
  ['ours', LEAST_THREAD, 4],
  ['ours', TIP_LIMITS, { ok: 1.5, least: 1 }],
  ['read', ALLOWABLE_WITHDRAWAL_FACTOR, 19.65],
  ['ours', DURATION, { short: 1, permanent: 0.62 }],
  ['ours', RESERVE, 1.3],
  ['ours', STRESS_BANDS, { ok: 0.8, least: 1 }],
  ['memory', VARIATION, { bending: 0.16, shear: 0.14, 'tension across': 0.25 }],
];

test.each(FIGURES)('a figure that is %s says so, and from where', (status, figure, value) => {
  expect(figure.status).toBe(status);
  expect(figure.value).toEqual(value);
  expect(figure.source.length).toBeGreaterThan(5);
  if (status === 'ours') expect(figure.source).toMatch(/^our convention/);
});
