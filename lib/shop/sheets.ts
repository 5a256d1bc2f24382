import { defineParams } from '../params/define-params.ts';
import { choice, text } from '../params/fields.ts';
import type { Outcome } from '../params/read-values.ts';
import { type GivenFields, group, type ValuesOf } from '../params/spec.ts';
import { readOwn, valuesOrThrow } from './read-own.ts';

// `usual` follows the units of the design: inches on US sheets in third angle, millimetres on ISO sheets in first angle
// (ISO 5456-2 and ASME Y14.3, from memory).

const US = ['A', 'B', 'C', 'D'] as const;
const ISO = ['A4', 'A3', 'A2', 'A1'] as const;

const FIELDS = {
  owner: text({ label: 'whose drawings they are', default: '', maxLength: 80 }),
  set: choice({ label: 'papers and scales', options: ['usual', 'us', 'iso'] }),
  paper: choice({ label: 'size of the paper', options: ['usual', ...US, ...ISO] }),
  projection: choice({ label: 'how views stand around the front view', options: ['usual', 'first', 'third'] }),
  lengths: choice({ label: 'what lengths are lettered in', options: ['usual', 'in', 'mm', 'both'] }),
  finish: text({ label: 'the finish in words, for the client', default: '', maxLength: 160 }),
};

const GROUPED = { sheets: group('Sheets', FIELDS) };

const sheetParams = defineParams(GROUPED, [
  {
    fields: ['sheets.set', 'sheets.paper'],
    check: ({ sheets: { set, paper } }) => {
      const sizes: readonly string[] = set === 'us' ? US : ISO;
      return set === 'usual' || paper === 'usual' || sizes.includes(paper)
        ? undefined
        : { path: 'sheets.paper', because: `papers of the set "${set}" are ${sizes.join(', ')}` };
    },
  },
]);

/** What the maker says of the shop drawings. */
export type Sheets = ValuesOf<typeof FIELDS>;

export type SheetsGiven = GivenFields<typeof FIELDS>;

/** The `sheets` of a design, whatever they are: their values, or all that is wrong with them. */
export const readSheets = (sheets: unknown, from = 'the design file'): Outcome<typeof GROUPED> =>
  readOwn(sheetParams, { sheets }, from);

/** @throws IssuesError with all that is wrong. */
export const defineSheets = (given: SheetsGiven = {}): Sheets => valuesOrThrow(readSheets(given), 'the sheets').sheets;
