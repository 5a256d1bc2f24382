import type { Table } from '../../build/cut-list-table.ts';
import type { Finding } from '../../model/finding.ts';
import type { Records } from '../../model/records.ts';
import type { Fields, ValuesOf } from '../../params/spec.ts';
import type { Shop } from '../../shop/shop.ts';
import type { UnitSystem } from '../../units/format-length.ts';

/** A piece that something is asked about. A later question makes an earlier one pointless. */
export interface Question {
  /** Goes up with every question. */
  readonly serial: number;
  readonly values: ValuesOf<Fields>;
  /** In which the sentences speak. */
  readonly units: UnitSystem;
  readonly shop: Shop;
  readonly records: Records;
}

/** A question before its desk numbers it. */
export type Unnumbered<Q extends Question> = Omit<Q, 'serial' | 'about'>;

/** Asks what the checks say of a piece. */
export interface CheckQuestion extends Question {
  readonly about?: never;
}

/** Asks which of the boards that were measured goes to which strip. */
export interface BoardsQuestion extends Question {
  readonly about: 'boards';
}

/**
 * What one check says, or how it ended. A check answers `plain` first, and when something would mend what it found,
 * once more with `fixes`.
 */
export type CheckAnswer =
  | {
      readonly serial: number;
      readonly kind: 'plain' | 'fixes';
      readonly check: string;
      readonly findings: readonly Finding[];
    }
  | { readonly serial: number; readonly kind: 'done' }
  | { readonly serial: number; readonly kind: 'failed'; readonly because: string };

/** A parameter and a text for it. */
export interface Setting {
  readonly path: string;
  readonly text: string;
}

/** What the boards are told to be good for. */
export interface BoardsTold {
  readonly lines: readonly string[];
  /** Which board goes where; absent without a plan. */
  readonly table?: Table;
  /** The joints of the plan. */
  readonly joints?: Setting;
}

/**
 * The strips as far as they are planned. `searching`: a better plan may come. `mending`: there is none, and what would mend
 * that is being looked for. `done`: that is all; nothing told for a piece without a top of strips.
 */
export type BoardsAnswer =
  | { readonly serial: number; readonly kind: 'searching'; readonly told?: BoardsTold }
  | { readonly serial: number; readonly kind: 'mending' }
  | { readonly serial: number; readonly kind: 'done'; readonly told?: BoardsTold }
  | { readonly serial: number; readonly kind: 'failed'; readonly because: string };
