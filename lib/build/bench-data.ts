import type { Records } from '../model/records.ts';
import type { Source } from '../params/collect.ts';
import type { Shop } from '../shop/shop.ts';
import type { RecordTexts } from './read-records.ts';

/** What the live page of a design starts with, as JSON: the page holds library and design itself. */
export interface BenchData {
  /** Machines, clamps and hands; absent: those that were bundled with the page. */
  readonly shop?: Shop;
  /** What was measured. */
  readonly records?: Records;
  /** The same, not read yet. */
  readonly texts?: RecordTexts;
  /** Values from a file, which win over those of the design. */
  readonly params?: Source;
  /** Path and text of every parameter that starts with another value than that. */
  readonly set: readonly (readonly [path: string, text: string])[];
}
