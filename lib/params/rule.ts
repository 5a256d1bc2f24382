import type { Mm } from '../units/mm.ts';
import type { Value } from './param.ts';
import type { Fields, PathOf, ValuesOf } from './spec.ts';

/** What a rule has against one field. */
export interface Problem<P extends string = string> {
  readonly path: P;
  /** The limits that the other fields leave, in the unit of the field; a field on its limit is good. */
  readonly min?: number;
  readonly max?: number;
  readonly because: string;
  /** A value of the field that would be good; only needed when there are no limits. */
  readonly try?: Value;
}

/** Prints a length in the unit the user wrote. */
export type Say = (mm: Mm) => string;

/**
 * A rule across fields. It runs only when all its fields were read well, and sees no other fields; the first field
 * decides the unit in which `say` prints. It is also asked about values the user did not give, to find the limits it
 * sets, so it must not depend on anything else.
 */
export interface Rule<F extends Fields = Fields> {
  readonly fields: readonly PathOf<F>[];
  check(values: ValuesOf<F>, say: Say): Problem<PathOf<F>> | readonly Problem<PathOf<F>>[] | undefined;
}
