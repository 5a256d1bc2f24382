import type { Mm } from '../../../units/mm.ts';
import { type Figure, ours } from './ours.ts';

/** Friction of feet on a floor. */
export const FLOOR_FRICTION: Figure<{ readonly low: number; readonly usual: number; readonly high: number }> = ours(
  { low: 0.3, usual: 0.4, high: 0.5 },
  'our convention',
);

/** Level push in N that makes a piece slide, from its weight in N. */
export const slidePush = (weight: number, friction: number): number => weight * friction;

/**
 * Whether a piece pushed level slides before it tips: d_g / z > μ.
 *
 * @param inside mm of the center of gravity inside the tipping line.
 * @param height mm of the push over the floor.
 */
export const slidesFirst = (inside: Mm, height: Mm, friction: number): boolean => inside / height > friction;
