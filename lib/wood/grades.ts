import type { Mm } from '../units/mm.ts';
import { parseLength } from '../units/parse-length.ts';
import { read, type Sourced } from './sourced.ts';

export type GradeId = 'fas' | 'fas-one-face' | 'selects' | '1-common' | '2-common' | '3a-common' | '3b-common';

/** A rectangle: width across, length along the grain. */
export interface Cutting {
  readonly width: Mm;
  readonly length: Mm;
}

export interface Grade {
  readonly id: GradeId;
  readonly name: string;
  readonly leastBoard: Sourced<Cutting>;
  /** Least clear cutting, any one of these; absent where the rule is not one of width and length. */
  readonly leastCuttings?: Sourced<readonly Cutting[]>;
  /** Least share of the board in clear cuttings, percent: what the grader sees, not what your parts will leave. */
  readonly clearPercent?: Sourced<number>;
  /** What one shop adds to the net board feet, percent; more for long clear boards. */
  readonly addOnPercent?: Sourced<{ readonly low: number; readonly high: number }>;
}

const NHLA = 'NHLA rules, as summarized on a chart of lumber grades';
const ADD_ON = 'Percent waste, woodworking forum thread: one maker each';

const size = (width: string, length: string): Cutting => ({ width: parseLength(width), length: parseLength(length) });
const board = (width: string, length: string) => read(size(width, length), NHLA);
const cuttings = (...all: readonly Cutting[]) => read(all, NHLA);
const addOn = (low: number, high: number) => read({ low, high }, ADD_ON);

/** Hardwood grades, best first. Of the two better-face grades the poor face is No. 1 Common. */
export const GRADES: readonly Grade[] = [
  {
    id: 'fas',
    name: 'FAS',
    leastBoard: board('6 in', '8 ft'),
    leastCuttings: cuttings(size('4 in', '5 ft'), size('3 in', '7 ft')),
    clearPercent: read(250 / 3, NHLA),
    addOnPercent: addOn(25, 30),
  },
  { id: 'fas-one-face', name: 'FAS One Face', leastBoard: board('6 in', '8 ft') },
  { id: 'selects', name: 'Selects', leastBoard: board('4 in', '6 ft'), addOnPercent: addOn(20, 20) },
  {
    id: '1-common',
    name: 'No. 1 Common',
    leastBoard: board('3 in', '4 ft'),
    leastCuttings: cuttings(size('4 in', '2 ft'), size('3 in', '3 ft')),
    clearPercent: read(200 / 3, NHLA, 'one chart misprints 60-2/3'),
    addOnPercent: addOn(50, 50),
  },
  {
    id: '2-common',
    name: 'No. 2A and 2B Common',
    leastBoard: board('3 in', '4 ft'),
    leastCuttings: cuttings(size('3 in', '2 ft')),
    clearPercent: read(50, NHLA),
  },
  {
    id: '3a-common',
    name: 'No. 3A Common',
    leastBoard: board('3 in', '4 ft'),
    leastCuttings: cuttings(size('3 in', '2 ft')),
    clearPercent: read(100 / 3, NHLA),
  },
  {
    id: '3b-common',
    name: 'No. 3B Common',
    leastBoard: board('3 in', '4 ft'),
    clearPercent: read(25, NHLA, 'sound cuttings of 36 square inches, at least 1 1/2 in wide'),
  },
];
