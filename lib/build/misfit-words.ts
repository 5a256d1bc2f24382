import type { Misfit, MisfitReason } from '../derive/lumber/cut-plan/cut-search.ts';
import { marksList } from './mark-order.ts';

/** Why parts are left over, as it is said. */
const REASONS: { readonly [R in MisfitReason]: string } = {
  'too large': 'no board is large enough',
  'zones in the way': 'defects are in the way on every board that is large enough',
  'too little lumber': 'there is too little lumber',
  'no place found': 'no place was found, which does not prove that there is none',
};

/** The parts that are not cut, a sentence for all that are left over for one reason. */
export function misfitWords(misfits: readonly Misfit[]): string[] {
  const groups = new Map<string, Misfit[]>();
  for (const misfit of misfits) {
    const key = misfitReason(misfit);
    groups.set(key, [...(groups.get(key) ?? []), misfit]);
  }
  return [...groups].map(([why, group]) => {
    const parts = marksList(group.map(({ part, count }) => (count > 1 ? `${count} of ${part}` : part)));
    return `${parts} left over: ${why}`;
  });
}

/** Why a part is left over. */
export const misfitReason = ({ reason, nearest }: Misfit): string =>
  nearest === undefined && reason === 'too large' ? 'there is no board' : REASONS[reason];
