import type { PartId } from './part.ts';

export type Verdict = 'ok' | 'look again' | 'change it' | 'not checked';

/** What one check says of a legal design; data, never thrown. */
export interface Finding {
  /** Name of the check: "slot cover". */
  readonly check: string;
  readonly verdict: Verdict;
  readonly part: PartId;
  /** Which feature or joint of it, when there is one. */
  readonly where?: string;
  readonly value?: number;
  readonly limit?: number;
  readonly unit: string;
  /** The sentence for the maker. */
  readonly because: string;
  /** What would mend it, recomputed for this design; empty when all is well. */
  readonly fixes: readonly string[];
  /** Where the limit comes from: a publication, "common practice, no source" or "our convention". */
  readonly source: string;
  /** Under which load: "someone leaning on one spot". */
  readonly load?: string;
  /** Least and greatest value when an input is only known as a range. */
  readonly range?: readonly [low: number, high: number];
  /** What was assumed to get here, in words. */
  readonly assumptions?: readonly string[];
  /** Inputs that are from memory: the finding rests on data still to be confirmed. */
  readonly unconfirmed?: readonly string[];
}

/** Worst first. */
export const VERDICTS: readonly Verdict[] = ['change it', 'look again', 'not checked', 'ok'];

/** Worst first; the rest in the order in which the checks were made. */
export const worstFirst = (findings: readonly Finding[]): Finding[] =>
  VERDICTS.flatMap((verdict) => findings.filter((f) => f.verdict === verdict));

/** The worst verdict of all; "ok" when there is none. */
export const worst = (findings: readonly Finding[]): Verdict => worstFirst(findings)[0]?.verdict ?? 'ok';
