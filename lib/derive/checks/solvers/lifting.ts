import { type Deg, MM_PER_INCH, type Mm } from '../../../units/mm.ts';
import { inRange, positive } from '../../../wood/in-range.ts';
import type { Figure } from './ours.ts';

/** What one person lifts, kg. */
export const PERSON_LIFT: Figure = {
  value: 25,
  status: 'read',
  source: 'HSE guidance on manual handling, second-hand',
};

/** Share of the sum of what each could lift that two or three people lift together; steps and slopes lower it. */
export const TEAM_SHARE: Figure<{ readonly 1: number; readonly 2: number; readonly 3: number }> = {
  value: { 1: 1, 2: 2 / 3, 3: 1 / 2 },
  status: 'read',
  source: 'HSE guidance on team handling, second-hand',
};

/** kg that a team lifts, from what each could lift alone; undefined from four people on: use equipment (our convention). */
export function teamCapacity(each: readonly number[]): number | undefined {
  const share: number | undefined = TEAM_SHARE.value[each.length as 1 | 2 | 3];
  return share === undefined ? undefined : share * each.reduce((sum, kg) => sum + kg, 0);
}

/** The lifting equation in one system of units. */
export interface LiftingForm {
  /** Load constant, kg or lb. */
  readonly constant: number;
  /** One of its lengths in mm. */
  readonly unit: Mm;
  readonly horizontal: number;
  readonly vertical: { readonly slope: number; readonly at: number; readonly most: number };
  readonly travel: { readonly base: number; readonly rise: number; readonly least: number; readonly most: number };
  /** Beyond it nothing is lifted. */
  readonly reach: number;
}

const NIOSH = 'NIOSH publication 94-110, applications manual of the revised lifting equation, second-hand';

export const LIFTING_METRIC: Figure<LiftingForm> = {
  value: {
    constant: 23,
    unit: 10,
    horizontal: 25,
    vertical: { slope: 0.003, at: 75, most: 175 },
    travel: { base: 0.82, rise: 4.5, least: 25, most: 175 },
    reach: 63,
  },
  status: 'read',
  source: `${NIOSH}; reach of 63 cm from memory`,
};

export const LIFTING_INCH: Figure<LiftingForm> = {
  value: {
    constant: 51,
    unit: MM_PER_INCH,
    horizontal: 10,
    vertical: { slope: 0.0075, at: 30, most: 70 },
    travel: { base: 0.82, rise: 1.8, least: 10, most: 70 },
    reach: 25,
  },
  status: 'read',
  source: `${NIOSH}; reach of 25 in from memory`,
};

/** Loss of capacity per degree of turning the body. Its table is read: 0.71 at 90°, 0.81 at 60°, 0.90 at 30°. */
export const TURNING_LOSS: Figure = { value: 0.0032, status: 'memory', source: NIOSH };

export interface Lift {
  /** From the ankles to the hands. */
  readonly horizontal: Mm;
  /** Of the hands over the floor at the start. */
  readonly vertical: Mm;
  /** Up or down. */
  readonly travel: Mm;
  readonly turn: Deg;
  /** From the tables of the equation; 1 for a lift now and then, and for good handles. */
  readonly frequency: number;
  readonly coupling: number;
}

/**
 * Recommended weight of one person's lift, in the mass unit of the form (kg for the metric one): constant × H × V × D × A
 * × F × C. As the equation has it, a near load or a short way counts no better than the least, and out of reach is 0.
 */
export function recommendedWeight(lift: Lift, { value: form }: Figure<LiftingForm> = LIFTING_METRIC): number {
  const h = positive('horizontal distance', lift.horizontal, ' mm') / form.unit;
  const v = inRange('height of the hands', lift.vertical, 0, Infinity, ' mm') / form.unit;
  const d = inRange('way', lift.travel, 0, Infinity, ' mm') / form.unit;
  inRange('turn', lift.turn, 0, 135, '°');
  if (h > form.reach || v > form.vertical.most || d > form.travel.most) return 0;
  const near = Math.min(1, form.horizontal / h);
  const high = 1 - form.vertical.slope * Math.abs(v - form.vertical.at);
  const far = Math.min(1, form.travel.base + form.travel.rise / Math.max(d, form.travel.least));
  const turned = 1 - TURNING_LOSS.value * lift.turn;
  return form.constant * near * high * far * turned * lift.frequency * lift.coupling;
}

/** Load over recommended weight: above 1 is more than the equation recommends. */
export const liftingIndex = (load: number, recommended: number): number => load / recommended;
