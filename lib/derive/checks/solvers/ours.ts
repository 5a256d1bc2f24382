import type { Status } from '../../../wood/sourced.ts';

/** How far a figure can be trusted: as for wood data, or "ours", a choice that no publication backs. */
export type Basis = Status | 'ours';

/** A figure that a check rests on, with its standing; wood data fit as they are. */
export interface Figure<T = number> {
  readonly value: T;
  readonly status: Basis;
  readonly source: string;
}

/** A choice of this project; the reason is said, and whoever prints the figure says that it is our convention. */
export const ours = <T>(value: T, reason: string): Figure<T> => ({ value, status: 'ours', source: reason });
