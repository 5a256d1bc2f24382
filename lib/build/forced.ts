import type { Finding } from '../model/finding.ts';
import { checksText, drawTogether, likeText } from '../model/like-findings.ts';

const blocking = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ verdict }) => verdict === 'change it');

/** What papers are made in spite of: a sentence for each check and part that says "change it". */
export const forcedBy = (findings: readonly Finding[]): readonly string[] =>
  drawTogether(blocking(findings)).map(likeText);

/** What fits into the remarks of a row. */
export const SPITE = 'made in spite of "change it"';

/** Checks that the line has room for. */
const MOST = 3;

/** The line that every paper then carries; undefined when nothing is to be changed. */
export function warningOf({ findings }: { readonly findings: readonly Finding[] }): string | undefined {
  const found = blocking(findings);
  return found.length > 0 ? `${SPITE}: ${checksText(found, MOST)}` : undefined;
}

/** For JSON documents: there only when there is something to say. */
export const forcedField = ({
  forced,
}: {
  readonly forced: readonly string[];
}): { readonly forced?: readonly string[] } => (forced.length > 0 ? { forced } : {});
