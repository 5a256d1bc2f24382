import { type Direction, directionOf, worseOf } from '../../model/compare-findings.ts';
import type { Finding } from '../../model/finding.ts';
import type { Trial } from './what-if.ts';

/** One check, or one of its limits, over all trials. */
export interface Column {
  readonly check: string;
  readonly unit: string;
  /** When it is the same in all trials. */
  readonly limit?: number | undefined;
  readonly direction?: Direction | undefined;
  /** The worst finding of each trial; undefined where there is none. */
  readonly cells: readonly (Finding | undefined)[];
}

/** More limits than this make one column of the worst. */
const MOST_LIMITS = 3;

/**
 * The checks of all trials, in their order. A check with two or three limits that are the same throughout has a column for
 * each (wood under a slot, wood over it); otherwise its worst finding stands for it.
 */
export function columnsOf(trials: readonly Trial[]): readonly Column[] {
  const found = trials.map((trial) => (trial.refused === undefined ? trial.findings : undefined));
  const checks = new Set(found.flatMap((findings) => findings?.map(({ check }) => check) ?? []));
  return [...checks].flatMap((check) => columnsOfCheck(found.map((all) => all?.filter((one) => one.check === check))));
}

type Found = readonly (readonly Finding[] | undefined)[];

function columnsOfCheck(found: Found): Column[] {
  const limits = commonLimits(found);
  if (limits.length === 0) return [column(found, undefined)];
  return limits.map((limit) =>
    column(
      found.map((all) => all && withLimit(all, limit)),
      limit,
    ),
  );
}

/** Findings with a limit; those without any where no finding has one. */
function withLimit(findings: readonly Finding[], limit: number): readonly Finding[] {
  if (findings.every((one) => one.limit === undefined)) return findings;
  return findings.filter((one) => one.limit !== undefined && keyOf(one.limit) === keyOf(limit));
}

/** The limits that every trial with limits has; none when they differ or are many. */
function commonLimits(found: Found): readonly number[] {
  const sets = found
    .map((all) => new Set(all?.flatMap(({ limit }) => (limit === undefined ? [] : [keyOf(limit)])) ?? []))
    .filter((set) => set.size > 0);
  const [first] = sets;
  if (!first || first.size > MOST_LIMITS) return [];
  const same = sets.every((set) => set.size === first.size && [...set].every((key) => first.has(key)));
  return same ? [...first].map(Number).sort((a, b) => a - b) : [];
}

const keyOf = (limit: number): string => limit.toPrecision(9);

function column(found: Found, limit: number | undefined): Column {
  const all = found.flatMap((findings) => findings ?? []);
  const direction = all.map(directionOf).find((one) => one !== undefined);
  const cells = found.map((findings) => findings?.reduce<Finding | undefined>(worst(direction), undefined));
  const named = all.find(({ value }) => value !== undefined) ?? all[0]!;
  return { check: named.check, unit: named.unit, limit, direction, cells };
}

const worst =
  (direction: Direction | undefined) =>
  (a: Finding | undefined, b: Finding): Finding =>
    a ? worseOf(a, b, direction) : b;
