import { memory, read, type Sourced } from './sourced.ts';

/** Moisture of wood in percent over a year. */
export interface MoistureRange {
  readonly low: number;
  readonly high: number;
  readonly average: number;
}

const TABLE_13_2 = 'FPL-GTR-190 table 13-2 and figure 13-1';

/** Moisture of interior woodwork by region of the United States. */
export const INDOOR_MOISTURE = {
  most: memory<MoistureRange>({ low: 6, high: 10, average: 8 }, TABLE_13_2),
  drySouthwest: memory<MoistureRange>({ low: 4, high: 9, average: 6 }, TABLE_13_2),
  dampWarmCoast: memory<MoistureRange>({ low: 8, high: 13, average: 11 }, TABLE_13_2),
} as const;

/** Moisture in percent at which furniture lumber is sold and worked. */
export const FURNITURE_LUMBER_MOISTURE: Sourced<{ readonly low: number; readonly high: number }> = read(
  { low: 6, high: 8 },
  'FPL-GTR-190 ch. 13',
);
