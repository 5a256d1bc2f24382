import type { UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { lengthText } from './length-text.ts';

/** What two cuts from opposite faces must share so that the second follows the first, mm: 1/8 in, common practice, no source. */
const OVERLAP = 3.175;

/** How to bring wood to the line of a template when it is thicker than the longest bit; nothing when it is not. */
export function bitLines(thickness: Mm, bitLength: Mm | undefined, units: UnitSystem): string[] {
  if (bitLength === undefined || thickness <= bitLength) return [];
  const bit = `${lengthText(thickness, units)} is thicker than the ${lengthText(bitLength, units)} bit`;
  const first = `${bit}: rout along the template from this face to past the middle,`;
  if (thickness <= 2 * bitLength - OVERLAP) {
    return [first, 'turn the wood over, take the template off, and flush-trim with the bearing on the routed land'];
  }
  const left = thickness - 2 * bitLength + OVERLAP;
  return [
    `${bit} from both faces: rout along the template, turn over, flush-trim off the routed land,`,
    `and plane away the ${lengthText(left, units, 'up')} that is left in the middle`,
  ];
}
