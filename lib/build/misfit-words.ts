import type { Misfit, MisfitReason } from '../derive/lumber/cut-plan/cut-search.ts';
import { formatLength, type UnitSystem } from '../units/format-length.ts';
import { marksList } from './mark-order.ts';

/** Why parts are left over, as it is said before what would do. */
const REASONS: { readonly [R in MisfitReason]: string } = {
  'too large': 'no board is large enough',
  'zones in the way': 'defects are in the way on every board that is large enough',
  'too little lumber': 'there is too little lumber',
  'no place found': 'no place was found, which does not prove that there is none',
};

/** The parts that are not cut, a sentence for all that are left over for one reason and want one board. */
export function misfitWords(misfits: readonly Misfit[], units: UnitSystem): string[] {
  const groups = new Map<string, Misfit[]>();
  for (const misfit of misfits) {
    const { reason, wanted, nearest } = misfit;
    const key = [reason, wanted.length, wanted.width, nearest === undefined].join();
    groups.set(key, [...(groups.get(key) ?? []), misfit]);
  }
  return [...groups.values()].map((group) => {
    const { reason, wanted, nearest } = group[0]!;
    const parts = marksList(group.map(({ part, count }) => (count > 1 ? `${count} of ${part}` : part)));
    const [width, length] = [wanted.width, wanted.length].map((mm) => formatLength(mm, units, 'up', 16));
    const why = nearest === undefined && reason === 'too large' ? 'there is no board' : REASONS[reason];
    return `${parts} left over: ${why}; a clear board ${width} x ${length} would do`;
  });
}
