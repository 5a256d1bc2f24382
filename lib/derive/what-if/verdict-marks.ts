import type { Verdict } from '../../model/finding.ts';

/** One letter for each verdict, where there is no room for the word; nothing for ok. */
export const VERDICT_MARKS: { readonly [V in Verdict]: string } = {
  'change it': 'C',
  'look again': 'L',
  'not checked': 'N',
  ok: '',
};
