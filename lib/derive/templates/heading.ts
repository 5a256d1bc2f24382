import type { UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';

/** What is lettered on every template. */
export interface Heading {
  readonly title: string;
  readonly revision: string;
  readonly date: string;
  readonly units: UnitSystem;
  /** What the maker must not overlook: the first line of the notes, absent when all is well. */
  readonly warning?: string;
  /** mm, the longest bit that follows a template; nothing is said about it when it is left out. */
  readonly bitLength?: Mm;
}
