import type { Issue } from './issue.ts';
import { renderIssues } from './render-issue.ts';

/** Values that a file of the maker gives are wrong: all issues as data, and as text for whoever shows no more than that. */
export class IssuesError extends RangeError {
  override readonly name = 'IssuesError';
  readonly issues: readonly Issue[];

  constructor(what: string, issues: readonly Issue[]) {
    super(`${what} cannot be read\n${renderIssues(issues, 'in')}`);
    this.issues = issues;
  }
}
