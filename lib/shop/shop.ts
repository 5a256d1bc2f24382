import { defineParams } from '../params/define-params.ts';
import { choice, count, length, quantity } from '../params/fields.ts';
import type { Outcome } from '../params/read-values.ts';
import { type GivenFields, group, type ValuesOf } from '../params/spec.ts';
import { readOwn, valuesOrThrow } from './read-own.ts';

// Defaults: an invented one-person shop with a 12 in planer. Nothing here is a recommendation.

const clamp = (reach: string, number: number) =>
  group(`clamps that reach ${reach}`, {
    reach: length({ label: 'opening', default: reach, min: '4 in', max: '12 ft' }),
    count: count({ label: 'how many', default: number, min: 0, max: 200 }),
  });

const GRADES = ['fas', 'fas-one-face', 'selects', '1-common', '2-common', '3a-common', '3b-common'] as const;

/** Rough lumber by quarters of an inch; a price of 0 says that the yard does not have it. */
const perFoot = (quarters: number, price: number) =>
  quantity({ label: `${quarters}/4, a board foot; 0 when there is none`, unit: '', default: price, min: 0, max: 1000 });

const FIELDS = {
  machines: group('Machines', {
    planerWidth: length({ label: 'widest board through the planer', default: '12 in', min: '4 in', max: '5 ft' }),
    planerHeight: length({ label: 'thickest board through the planer', default: '6 in', min: '1 in', max: '24 in' }),
    jointerWidth: length({ label: 'widest board over the jointer', default: '8 in', min: '3 in', max: '24 in' }),
    sawDepth: length({ label: 'deepest cut of the table saw', default: '3 1/8 in', min: '1 in', max: '10 in' }),
    bandsawHeight: length({ label: 'highest cut of the bandsaw', default: '10 in', min: '2 in', max: '30 in' }),
    bitLength: length({ label: 'longest flush-trim bit', default: '2 in', min: '1/4 in', max: '6 in' }),
    mortiseDepth: length({ label: 'deepest mortise that can be cut', default: '2 in', min: '1/4 in', max: '8 in' }),
  }),
  clamps: group('Clamps', {
    short: clamp('24 in', 8),
    medium: clamp('48 in', 14),
    long: clamp('96 in', 2),
    force: quantity({ label: 'force of one clamp', unit: 'N', default: 5000, min: 100, max: 50_000 }),
    caul: length({ label: 'depth of the cauls', default: '2 in', min: 0, max: '12 in' }),
  }),
  gluing: group('Gluing', {
    openTime: quantity({ label: 'open time of the glue', unit: 'min', default: 10, min: 1, max: 120 }),
    perJoint: quantity({ label: 'spreading and closing one long joint', unit: 'min', default: 2.5, min: 0.2, max: 60 }),
    pressure: quantity({ label: 'pressure wanted on a joint', unit: 'MPa', default: 1.2, min: 0.1, max: 3 }),
  }),
  hands: group('Hands', {
    people: count({ label: 'people who can lift together', default: 2, min: 1, max: 12 }),
    perPerson: quantity({ label: 'what one lifts alone', unit: 'kg', default: 25, min: 5, max: 60 }),
  }),
  lumber: group('Lumber', {
    price: group('Price of a board foot, in the money of the shop', {
      q4: perFoot(4, 8),
      q5: perFoot(5, 8.6),
      q6: perFoot(6, 9.2),
      q8: perFoot(8, 10),
      q10: perFoot(10, 12.5),
      q12: perFoot(12, 14.5),
      q16: perFoot(16, 19),
    }),
    grade: choice({ label: 'grade that is bought', options: GRADES, default: 'fas' }),
    basis: choice({ label: 'how waste is reckoned', options: ['yield', 'add-on'], default: 'yield' }),
    yield: quantity({ label: 'of what is bought ends in parts', unit: '%', default: 70, min: 10, max: 100 }),
    addOn: quantity({ label: 'added to the net', unit: '%', default: 30, min: 0, max: 400 }),
    spares: count({ label: 'spare boards of the thickest class', default: 1, min: 0, max: 20 }),
    kerf: length({ label: 'saw cut', default: '1/8 in', min: 0, max: '1/4 in' }),
    jointing: length({ label: 'off an edge that is jointed', default: '1/32 in', min: 0, max: '1/4 in' }),
    edgeTrim: length({ label: 'off each long edge of a glued blank', default: '1/8 in', min: 0, max: '1 in' }),
  }),
};

const shopParams = defineParams(FIELDS);

/** What a shop has: machines, clamps, glue, hands, and what its yard sells. Lengths in mm. */
export type Shop = ValuesOf<typeof FIELDS>;

export type ShopGiven = GivenFields<typeof FIELDS>;

/** A shop from whatever a file gives: its values, or all that is wrong with them. */
export const readShop = (given: unknown, from = 'the shop file'): Outcome<typeof FIELDS> =>
  readOwn(shopParams, given, from);

/** The shop of `designs/shop.ts`: only what differs from the defaults need be given. @throws IssuesError with all that is wrong. */
export const defineShop = (given: ShopGiven = {}): Shop => valuesOrThrow(readShop(given), 'the shop');
