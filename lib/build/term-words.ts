import { MM2_PER_DM2, MM3_PER_LITRE } from '../derive/lumber/strip-plan/prices.ts';
import type { StripTerm } from '../derive/lumber/strip-plan/strip-problem.ts';
import { boardFeet } from '../units/board-feet.ts';
import { formatLength, formatNumber, type UnitSystem } from '../units/format-length.ts';

interface Words {
  readonly name: string;
  readonly amount: (value: number, units: UnitSystem) => string;
  /** How it is counted, where that is not plain. */
  readonly note?: string;
}

/** dm2 as one speaks of them at the bench: square inches, or square centimeters. */
export const areaText = (dm2: number, units: UnitSystem): string =>
  units === 'in' ? `${formatNumber((dm2 * MM2_PER_DM2) / 25.4 ** 2, 1)} sq in` : `${formatNumber(dm2 * 100, 0)} cm2`;

const woodText = (liters: number, units: UnitSystem): string =>
  units === 'in'
    ? `${formatNumber(boardFeet(liters * MM3_PER_LITRE), 1)} board feet`
    : `${formatNumber(liters, 1)} liters`;

/** What a strip plan is judged by, in words. */
export const TERM_WORDS: { readonly [T in StripTerm]: Words } = {
  reserve: { name: 'reserve missing', amount: (mm, units) => formatLength(mm, units) },
  shownDefects: { name: 'defects shown', amount: areaText, note: 'as wide as the boards are' },
  undersideDefects: { name: 'defects underneath', amount: areaText },
  rings: { name: 'rings alike', amount: (pairs) => `${formatNumber(pairs, 0)} ${pairs === 1 ? 'pair' : 'pairs'}` },
  tone: { name: 'tones of neighbors', amount: (tone) => `${formatNumber(tone, 2)} altogether` },
  volume: { name: 'wood', amount: woodText, note: 'thick boards counted up' },
  symmetry: { name: 'mirrored strips unlike', amount: (cm, units) => formatLength(cm * 10, units) },
};
