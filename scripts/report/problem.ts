import type { Issue, UnitSystem } from 'tablewright';
import { renderIssue } from '../../lib/params/render-issue.ts';
import { EXIT, type Exit, worstExit } from '../exit.ts';
import type { Complaint } from './complaint.ts';
import { exitOfComplaint, isComplaint, renderComplaint } from './render-complaint.ts';

/** Whatever keeps a command from doing what it was asked. */
export type Problem = Issue | Complaint;

export const renderProblem = (problem: Problem, units: UnitSystem): string =>
  isComplaint(problem) ? renderComplaint(problem) : renderIssue(problem, units);

export const exitOf = (problems: readonly Problem[]): Exit =>
  worstExit(problems.map((problem) => (isComplaint(problem) ? exitOfComplaint(problem) : EXIT.wrongUse)));

/** "2 problems; nothing was written"; empty when that tells nothing. */
export function closing(found: readonly Problem[], ending: string): string {
  const count = found.length === 1 ? '1 problem' : `${found.length} problems`;
  if (found.length === 1 && !ending) return '';
  return ending ? `${count}; ${ending}` : count;
}
