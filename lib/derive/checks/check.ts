import type { Assembly } from '../../model/assembly.ts';
import type { Finding, Verdict } from '../../model/finding.ts';
import type { Part, PartId } from '../../model/part.ts';
import type { Board } from '../../model/records.ts';
import type { UndersideFit } from '../../model/underside-fit.ts';
import type { Loads } from '../../shop/loads.ts';
import type { Shop } from '../../shop/shop.ts';
import type { Site } from '../../shop/site.ts';
import { formatLength, type Rounding, steps, type UnitSystem } from '../../units/format-length.ts';
import { formatMove } from '../../units/format-load.ts';
import type { Mm } from '../../units/mm.ts';
import { unconfirmed } from '../../wood/confidence.ts';
import { FIELD_LABELS } from '../../wood/field-labels.ts';
import type { SpeciesField } from '../../wood/species.ts';
import type { SpeciesId } from '../../wood/species-id.ts';
import { speciesById } from '../../wood/species-list.ts';

/** What every check is given. */
export interface CheckContext {
  readonly assembly: Assembly;
  /** In which the sentences speak. */
  readonly units: UnitSystem;
  readonly shop: Shop;
  readonly site: Site;
  readonly loads: Loads;
  /** For fixes that are found by trying; absent when the piece has no parameters to move. */
  readonly tune?: Tune;
  /** The top as it was measured, the piece as it was designed, and the day of its revision; absent when nothing was. */
  readonly measured?: { readonly fit: UndersideFit; readonly nominal: Assembly; readonly revised: string };
  /** The boards as they were measured. */
  readonly boards?: readonly Board[];
}

/** The parameters of a design as a check may move them. */
export interface Tune {
  /** The value of a length, quantity or count; undefined when the design has no such parameter. */
  value(path: string): number | undefined;
  /** The limits of the spec, mm or the plain unit. */
  limits(path: string): { readonly min: number; readonly max: number };
  /** The piece with one parameter moved; undefined when the rules refuse it. */
  moved(path: string, value: number): CheckContext | undefined;
  /** "edge 1 3/8 in": label and value as one says them. */
  say(path: string, value: number): string;
  /** The step in which a maker would change it: 1/16 in or 1 mm, 1 for a count. */
  step(path: string): number;
}

/**
 * One check: what it looks at is said in its own file. It answers at least one finding, "ok" or "not checked" included;
 * only a check of what was measured has nothing to say when nothing was.
 */
export interface Check {
  readonly name: string;
  run(context: CheckContext): Finding[];
}

/** A length for a sentence, rounded to the side that does not flatter. */
export const say = ({ units }: CheckContext, mm: Mm, rounding: Rounding = 'nearest'): string =>
  formatLength(mm, units, rounding, 32);

/** A movement under load, or with the seasons: small, so in tenths of a mm, or in 64ths and thousandths of an inch. */
export const sayMove = ({ units }: CheckContext, mm: Mm, rounding?: Rounding): string =>
  formatMove(mm, units, rounding);

/** A share in whole percent. */
export const sayShare = (share: number, rounding: Rounding = 'nearest'): string => `${steps(share, 0.01, rounding)} %`;

/** How a value and the limit it should not be more than are rounded, so that no sentence contradicts its verdict. */
export const beside = (verdict: Verdict): { readonly value: Rounding; readonly limit: Rounding } =>
  verdict === 'ok' ? { value: 'nearest', limit: 'nearest' } : { value: 'up', limit: 'down' };

/** Values of a wood that are from memory, as words: findings that rest on them say so. */
export const fromMemory = (wood: SpeciesId, fields: readonly SpeciesField[]): string[] =>
  unconfirmed(speciesById(wood), fields).map((field) => `${FIELD_LABELS[field]} of ${speciesById(wood).name}`);

/** A finding that could not be made, and what it needs. */
export const notChecked = (check: string, part: PartId, needs: string, unit = 'mm'): Finding => ({
  check,
  verdict: 'not checked',
  part,
  unit,
  because: `not checked: needs ${needs}`,
  fixes: [],
  source: 'our convention',
});

/** "bearer B1". */
export const called = (part: Part): string => `${part.name} ${part.mark}`;

/** Verdict of a value that should not be more than a limit; between `wanted` and `most` it is worth another look. */
export function atMostVerdict(value: number, wanted: number, most: number): Verdict {
  if (value <= wanted + SAME) return 'ok';
  return value <= most + SAME ? 'look again' : 'change it';
}

/** Verdict of a value that must not be less than a limit; between `least` and `wanted` it is worth another look. */
export function atLeastVerdict(value: number, wanted: number, least: number): Verdict {
  if (value >= wanted - SAME) return 'ok';
  return value >= least - SAME ? 'look again' : 'change it';
}

const SAME = 1e-6;
