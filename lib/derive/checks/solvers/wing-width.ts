import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';

/** Breadths of the wing that answers as the plate does to one force at its edge. */
export interface WingWidths {
  readonly deflection: Mm;
  readonly stress: Mm;
}

export interface WingEdge {
  /** From the bearer end to the edge. */
  readonly reach: Mm;
  /** Thickness at the edge and at the bearer end. */
  readonly tip: Mm;
  readonly root: Mm;
  /** MPa along and across the grain. */
  readonly along: number;
  readonly across: number;
}

/** Where the force acts: far from an end of the edge, or at its corner. */
export type WingPlace = 'middle of an edge' | 'corner';

/** Range of the plates that the rule was fitted to (computed): thickness at the edge over the root, and E_L/E_T. */
export const WIDTH_RANGE = { taper: { low: 1 / 3, high: 1 }, stiffness: { low: 9, high: 18 } } as const;

/**
 * How much of an edge helps to carry one force: b = 1.93 a (E_L/E_T)^¼ (h0/h1)^0.55 for deflection and
 * 1.95 a (E_L/E_T)^¼ (h0/h1)^⅓ for stress in the middle; 0.72 a (E_L/E_T)^¼ (h0/h1)^0.55 and 1.05 a at a free corner.
 * Undefined outside the range of the fit. Against plates clamped at the root, G_LT from 0.8 to 1.13 of E_T (computed): the
 * deflection comes within 11 % in the middle and 20 % at a corner, the stress within 7 % and 23 %.
 */
export function wingWidths({ reach, tip, root, along, across }: WingEdge, place: WingPlace): WingWidths | undefined {
  const taper = positive('thickness at the edge', tip, ' mm') / positive('thickness at the root', root, ' mm');
  const ratio = positive('E along', along, ' MPa') / positive('E across', across, ' MPa');
  if (!within(taper, WIDTH_RANGE.taper) || !within(ratio, WIDTH_RANGE.stiffness)) return undefined;
  const spread = positive('reach', reach, ' mm') * ratio ** 0.25;
  if (place === 'corner') return { deflection: 0.72 * spread * taper ** 0.55, stress: 1.05 * reach };
  return { deflection: 1.93 * spread * taper ** 0.55, stress: 1.95 * spread * Math.cbrt(taper) };
}

const within = (value: number, { low, high }: { readonly low: number; readonly high: number }): boolean =>
  value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9);
