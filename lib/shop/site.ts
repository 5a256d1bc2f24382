import { defineParams } from '../params/define-params.ts';
import { count, flag, length } from '../params/fields.ts';
import type { Outcome } from '../params/read-values.ts';
import { type GivenFields, group, type ValuesOf } from '../params/spec.ts';
import { readOwn, valuesOrThrow } from './read-own.ts';

// A size of 0 means that it is not known: the check then says what it needs.

const FIELDS = {
  room: group('Room', {
    length: length({ label: 'length, along the table', default: 0, min: 0, max: '100 ft' }),
    width: length({ label: 'width, across the table', default: 0, min: 0, max: '100 ft' }),
  }),
  route: group('Way in', {
    corridor: length({ label: 'narrowest corridor before a turn', default: 0, min: 0, max: '20 ft' }),
    corridorAfter: length({ label: 'corridor after the turn', default: 0, min: 0, max: '20 ft' }),
    doorWidth: length({ label: 'narrowest door', default: 0, min: 0, max: '12 ft' }),
    doorHeight: length({ label: 'lowest door', default: 0, min: 0, max: '12 ft' }),
    ceiling: length({ label: 'lowest ceiling', default: 0, min: 0, max: '30 ft' }),
    packing: length({ label: 'blankets on each side', default: '3/4 in', min: 0, max: '6 in' }),
  }),
  seating: group('Seating', {
    places: count({ label: 'places wanted; 0 for as many as fit', default: 0, min: 0, max: 40 }),
    least: length({ label: 'least width of a place', default: '23 in', min: '16 in', max: '48 in' }),
    roomy: length({ label: 'roomy width of a place', default: '30 in', min: '16 in', max: '60 in' }),
    seatHeight: length({ label: 'seat over the floor', default: '17 1/2 in', min: '10 in', max: '36 in' }),
    thigh: length({ label: 'thigh over the seat', default: '6 1/2 in', min: '3 in', max: '12 in' }),
    knee: length({ label: 'depth of a knee place', default: '12 in', min: '6 in', max: '24 in' }),
    ends: flag({ label: 'places at the ends', default: true }),
    wheelchair: flag({ label: 'a wheelchair place is wanted', default: false }),
  }),
};

/** Where a table goes and who sits at it. Lengths in mm; 0 for what is not known. */
export type Site = ValuesOf<typeof FIELDS>;

export type SiteGiven = GivenFields<typeof FIELDS>;

const GROUPED = { site: group('Site', FIELDS) };

const siteParams = defineParams(GROUPED);

/** The `site` of a design, whatever it is: its values, or all that is wrong with them. */
export const readSite = (site: unknown, from = 'the design file'): Outcome<typeof GROUPED> =>
  readOwn(siteParams, { site }, from);

/** @throws IssuesError with all that is wrong. */
export const defineSite = (given: SiteGiven = {}): Site => valuesOrThrow(readSite(given), 'the site').site;
