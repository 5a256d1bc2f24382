import type { Finding } from './finding.ts';

/** What one check says of one part with one verdict. */
export interface LikeFindings {
  /** The one that is farthest from its limit. */
  readonly worst: Finding;
  readonly count: number;
}

/** Findings drawn together, in the order in which their kind comes first. */
export function drawTogether(findings: readonly Finding[]): readonly LikeFindings[] {
  const groups = new Map<string, LikeFindings>();
  for (const one of findings) {
    const key = JSON.stringify([one.verdict, one.check, one.part]);
    const { worst, count } = groups.get(key) ?? { worst: one, count: 0 };
    groups.set(key, { worst: distance(one) > distance(worst) ? one : worst, count: count + 1 });
  }
  return [...groups.values()];
}

/** `slot cover: strip T1: … (and 3 more on this part)` */
export function likeText({ worst, count }: LikeFindings): string {
  return `${worst.check}: ${worst.because}${count > 1 ? ` (and ${count - 1} more on this part)` : ''}`;
}

/** `cuts in stock (20), give (5), sway along`: the checks of some findings, each once; beyond `most` only how many. */
export function checksText(findings: readonly Finding[], most = Number.POSITIVE_INFINITY): string {
  const counts = new Map<string, number>();
  for (const { check } of findings) counts.set(check, (counts.get(check) ?? 0) + 1);
  const names = [...counts].map(([check, count]) => (count > 1 ? `${check} (${count})` : check));
  const rest = names.length - most;
  return rest > 0 ? `${names.slice(0, most).join(', ')} and ${rest} more` : names.join(', ');
}

const distance = ({ value = 0, limit = value }: Finding): number => Math.abs(value - limit);
