import type { Finding } from 'tablewright';

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

const distance = ({ value = 0, limit = value }: Finding): number => Math.abs(value - limit);
