import type { Assembly } from '../model/assembly.ts';
import type { Measured } from '../model/measured.ts';
import type { Fields, GivenFields, Spec, ValuesOf } from '../params/spec.ts';
import type { LoadsGiven } from '../shop/loads.ts';
import type { LumberWishesGiven } from '../shop/lumber-wishes.ts';
import type { SheetsGiven } from '../shop/sheets.ts';
import type { SiteGiven } from '../shop/site.ts';
import type { UnitSystem } from '../units/format-length.ts';

/** What a design file exports: which parameters a piece has, what values this one takes, and how it is put together. */
export interface Design<F extends Fields = Fields> {
  readonly title: string;
  /** Number of the drawing or the order; default none. */
  readonly number?: string;
  /** "A", "B" …: goes up with every change that has left the shop. */
  readonly revision: string;
  /** Date of the revision, YYYY-MM-DD: part of the design, so that the same design gives the same papers on any day. */
  readonly date: string;
  /** What the papers speak; the model holds millimetres. */
  readonly units: UnitSystem;
  readonly params: Spec<F>;
  /** Only what differs from the defaults. */
  readonly values: GivenFields<F>;
  /** Room, way in and seats, as far as they are known. */
  readonly site?: SiteGiven;
  /** Loads other than the usual ones. */
  readonly loads?: LoadsGiven;
  /** How boards are to be arranged and used; usual wishes when left out. */
  readonly lumber?: LumberWishesGiven;
  /** Owner, paper and projection of the shop drawings, and the finish in words; usual ones when left out. */
  readonly sheets?: SheetsGiven;
  /** Puts the piece together; must depend on nothing but the values and, where something was measured, on that. */
  compose(values: ValuesOf<F>, title: string, measured?: Measured): Assembly;
}

/** Gives a design file its types: values and `compose` are checked against the parameters. */
export const defineDesign = <F extends Fields>(design: Design<F>): Design<F> => design;
