import { type Finding, VERDICTS } from './finding.ts';

/** On which side of its limit a value is well. */
export type Direction = 'at most' | 'at least';

/** The side that verdicts show; undefined where value and limit do not tell. */
export function directionOf({ verdict, value, limit }: Finding): Direction | undefined {
  if (value === undefined || limit === undefined || verdict === 'not checked') return undefined;
  if (Math.abs(value - limit) <= SAME * Math.max(1, Math.abs(limit))) return undefined;
  return value < limit === (verdict === 'ok') ? 'at most' : 'at least';
}

const SAME = 1e-6;

/** The worse of two findings of a kind: by verdict, then by how far the value is beyond its limit; the first of equals. */
export function worseOf(a: Finding, b: Finding, direction: Direction | undefined): Finding {
  const rank = VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict);
  if (rank !== 0) return rank < 0 ? a : b;
  return beyond(b, direction) > beyond(a, direction) ? b : a;
}

/** How far a value is beyond its limit, in parts of it; negative inside, endlessly so without a limit. */
export function beyond({ value, limit }: Finding, direction: Direction | undefined): number {
  if (value === undefined || limit === undefined || direction === undefined) return Number.NEGATIVE_INFINITY;
  const missing = direction === 'at most' ? value - limit : limit - value;
  return limit === 0 ? missing : missing / Math.abs(limit);
}
