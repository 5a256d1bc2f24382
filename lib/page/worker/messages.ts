import type { Finding } from '../../model/finding.ts';
import type { Records } from '../../model/records.ts';
import type { Fields, ValuesOf } from '../../params/spec.ts';
import type { Shop } from '../../shop/shop.ts';
import type { UnitSystem } from '../../units/format-length.ts';

/** Asks what the checks say of a piece. A later question makes an earlier one pointless. */
export interface CheckQuestion {
  /** Goes up with every question. */
  readonly serial: number;
  readonly values: ValuesOf<Fields>;
  /** In which the sentences speak. */
  readonly units: UnitSystem;
  readonly shop: Shop;
  readonly records: Records;
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
