import type { UnitSystem } from '../../units/format-length.ts';

/** What is lettered on every template. */
export interface Heading {
  readonly title: string;
  readonly revision: string;
  readonly date: string;
  readonly units: UnitSystem;
  /** What the maker must not overlook: the first line of the notes, absent when all is well. */
  readonly warning?: string;
}
