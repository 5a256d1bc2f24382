import { formatNumber } from '../units/format-length.ts';

/** A greater part of the bound tells nothing but that the search has hardly begun (our convention). */
const TELLING = 10;

/** How far a plan may be from the best there is, in words. `gap` is a part of the bound. */
export function proofText({ done, gap }: { readonly done: boolean; readonly gap?: number | undefined }): string {
  if (done) return 'best possible';
  if (gap === undefined || !(gap < TELLING)) return 'how far from the best possible is not known';
  return `within ${formatNumber(Math.ceil(gap * 1000) / 10, 1)} % of the best possible`;
}
