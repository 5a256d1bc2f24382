import { MM_PER_INCH, type Mm } from '../units/mm.ts';
import { positive } from './in-range.ts';

const SQUARE_FOOT = (12 * MM_PER_INCH) ** 2;

/** An exact half is recognized through floating-point noise, in square feet (our convention). */
const NOISE = 1e-9;

/** The face of a board. */
export interface Face {
  readonly width: Mm;
  readonly length: Mm;
}

/** Square feet of a face, not yet rounded: width in inches times length in feet over 12. */
export function squareFeet({ width, length }: Face): number {
  return (positive('width', width, ' mm') * positive('length', length, ' mm')) / SQUARE_FOOT;
}

/**
 * Surface measure of each board of a tally, in the order measured: whole square feet, exact halves alternately up and
 * down (American Hardwood Export Council, Grading and measurement, read). That the first half goes up is our convention.
 */
export function surfaceMeasures(faces: readonly Face[]): number[] {
  let up = true;
  return faces.map((face) => {
    const exact = squareFeet(face);
    const whole = Math.floor(exact);
    if (Math.abs(exact - whole - 0.5) > NOISE) return Math.round(exact);
    const rounded = up ? whole + 1 : whole;
    up = !up;
    return rounded;
  });
}

/** Board feet from surface measure: times the nominal thickness in inches, never under 1 (the same source). */
export function boardFeetFromSurface(surfaceMeasure: number, nominalThickness: Mm): number {
  return surfaceMeasure * Math.max(1, positive('thickness', nominalThickness, ' mm') / MM_PER_INCH);
}
