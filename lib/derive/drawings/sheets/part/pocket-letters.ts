import type { LengthLook } from '../../../../drawing/style.ts';
import { type Bore, isPocket, type Pocket } from '../../../../model/feature.ts';
import type { Part } from '../../../../model/part.ts';
import type { Rounding } from '../../../../units/format-length.ts';
import type { Mm } from '../../../../units/mm.ts';
import { sayLength } from '../say-length.ts';
import { type Side, sideOf } from './part-views.ts';

/** Pockets that are worked alike, under one letter. */
export interface LetteredPockets {
  readonly letter: string;
  readonly what: string;
  readonly size: string;
  readonly depth: string;
  readonly where: string;
  readonly pockets: readonly Pocket[];
}

/** What the sides of a part are called. */
export type SideWords = { readonly [S in Side | 'farFace']: string };

/** Without i, l and o, which look like figures. */
const LETTERS = 'abcdefghjkmnpqrstuvwxyz';

const letterOf = (k: number): string =>
  (k < LETTERS.length ? '' : letterOf(Math.floor(k / LETTERS.length) - 1)) + LETTERS[k % LETTERS.length];

/** The pockets of a part in the order in which they are worked. */
export function letteredPockets(part: Part, words: SideWords, look: LengthLook): LetteredPockets[] {
  const kinds = new Map<string, Pocket[]>();
  const said = (pocket: Pocket): Omit<LetteredPockets, 'letter' | 'pockets'> => ({
    what: WHAT[pocket.kind](pocket as never),
    size: sizeOf(pocket, look),
    depth: pocket.depth === 'through' ? 'right through' : sayLength(pocket.depth, look),
    where: sideWords(pocket, words),
  });
  for (const pocket of part.features.filter(isPocket)) {
    const key = Object.values(said(pocket)).join('|');
    kinds.set(key, [...(kinds.get(key) ?? []), pocket]);
  }
  return [...kinds.values()].map((pockets, k) => ({ letter: letterOf(k), ...said(pockets[0]!), pockets }));
}

const WHAT: { readonly [K in Pocket['kind']]: (pocket: Extract<Pocket, { kind: K }>) => string } = {
  mortise: ({ ends, play }) => `mortise, ${ends} ends${play > 0 ? ', with play' : ''}`,
  bore: ({ purpose }) => `${purpose} hole`,
  slottedHole: ({ purpose }) => `${purpose} slot`,
};

/** A screw must bite in a pilot and pass everything else. */
const DRILLED: { readonly [P in Bore['purpose']]: Rounding } = { pilot: 'down', clearance: 'up', counterbore: 'up' };

/** Drills are told to 1/64 in and in millimetres, since they are bought by either. */
const drillLook = (look: LengthLook): LengthLook =>
  look.system === 'mm' ? look : { system: 'both', denominator: 64, rounding: look.rounding, decimals: 1 };

function sizeOf(pocket: Pocket, look: LengthLook): string {
  const say = (mm: Mm): string => sayLength(mm, look);
  if (pocket.kind === 'mortise') return `${say(pocket.width)} x ${say(pocket.length)}`;
  const across = pocket.kind === 'bore' ? pocket.diameter : pocket.width;
  const drill = sayLength(across, drillLook(look), DRILLED[pocket.purpose]);
  return pocket.kind === 'bore' ? `${drill} across` : `${drill} x ${sayLength(pocket.length, look, 'up')}`;
}

/** A hole that starts on the floor of a counterbore is named after the same side. */
function sideWords(pocket: Pocket, words: SideWords): string {
  const side = sideOf(pocket);
  return side === 'face' && pocket.into[2] < 0 ? words.farFace : words[side];
}
