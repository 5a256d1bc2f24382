import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';

/** Part of a rectangle that carries shear as if evenly: Timoshenko's factor for it. */
export const SHEAR_SHARE = 5 / 6;

/**
 * What shear adds over a length with one shear force in N, V L/(κ A G). Only for an E that is free of shear: the printed
 * bending modulus has it included.
 *
 * @param area mm². @param g MPa.
 */
export const shearDeflection = (force: number, length: Mm, area: number, g: number): Mm =>
  (force * length) / (SHEAR_SHARE * positive('area', area, ' mm²') * positive('shear modulus', g, ' MPa'));
