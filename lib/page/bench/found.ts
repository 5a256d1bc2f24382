import type { CheckContext } from '../../derive/checks/check.ts';
import { CHECKS } from '../../derive/checks/checks.ts';
import type { Finding } from '../../model/finding.ts';
import type { CheckAnswer } from '../worker/messages.ts';
import { QUICK_CHECKS } from '../worker/quick-checks.ts';
import { canBeMended } from '../worker/run-checks.ts';

/** What one check found, and how it stands with the values as they are. */
export interface CheckState {
  readonly findings: readonly Finding[];
  /** `now`: for these values. `mending`: the same, but what would mend it is not known yet. `before`: of earlier values. */
  readonly state: 'now' | 'mending' | 'before';
}

/** What all checks have found so far. */
export interface Found {
  readonly checks: ReadonlyMap<string, CheckState>;
  /** Why the checks could not be made. */
  readonly failed?: string | undefined;
}

export const NOTHING_FOUND: Found = { checks: new Map() };

/** What can be told at once: quick checks anew, the others as they were. */
export function foundAtOnce(before: Found, context: Omit<CheckContext, 'tune'>): Found {
  const old = [...before.checks].map(([name, { findings }]) => [name, { findings, state: 'before' }] as const);
  const quick = QUICK_CHECKS.map((check) => [check.name, fresh(check.run(context))] as const);
  return { checks: new Map<string, CheckState>([...old, ...quick]) };
}

/** The same with an answer more. */
export function foundMore(found: Found, answer: CheckAnswer): Found {
  if (answer.kind === 'failed') return { ...found, failed: answer.because };
  if (answer.kind === 'done') {
    return { checks: new Map([...found.checks].map(([name, one]) => [name, { ...one, state: 'now' as const }])) };
  }
  const { check, kind, findings } = answer;
  const state: CheckState = kind === 'fixes' ? { findings, state: 'now' } : fresh(findings);
  return { ...found, checks: new Map([...found.checks, [check, state]]) };
}

const fresh = (findings: readonly Finding[]): CheckState => ({
  findings,
  state: findings.some(canBeMended) ? 'mending' : 'now',
});

/** All findings, in the order of the checks. */
export const findingsOf = ({ checks }: Found): readonly Finding[] =>
  CHECKS.flatMap(({ name }) => checks.get(name)?.findings ?? []);

/** Whether everything is said, what would mend it included. */
export const isComplete = ({ checks }: Found): boolean => CHECKS.every(({ name }) => checks.get(name)?.state === 'now');

/** Whether every check has looked at these values, though what would mend them may be open. */
export const isSettled = (found: Found): boolean => pendingChecks(found) === 0;

/** How many checks have not looked at these values yet. */
export const pendingChecks = ({ checks }: Found): number =>
  CHECKS.filter(({ name }) => (checks.get(name)?.state ?? 'before') === 'before').length;

/** Whether it is still open what would mend something. */
export const isMending = ({ checks }: Found): boolean => [...checks.values()].some(({ state }) => state === 'mending');
