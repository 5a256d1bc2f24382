import type { Exit } from '../exit.ts';
import type { Complaint } from './complaint.ts';
import { exitOf } from './problem.ts';
import { reporterFor } from './reporter.ts';

/** An error that should not be, with its stack. */
export function bugComplaint(error: unknown): Complaint {
  const stack = error instanceof Error ? error.stack : `thrown: ${String(error)}`;
  const given = 'this is a fault of tablewright, not of the design; the command line and these lines help to find it';
  return { code: 'bug', given, subject: '', because: stack };
}

/** Tells of an error that should not be; answers the exit code. */
export const reportBug = (error: unknown, argv: readonly string[]): Exit => reportLast(bugComplaint(error), argv);

/** Tells that the process ends before the command does; answers the exit code. */
export function reportUnfinished(argv: readonly string[]): Exit {
  const because = 'it ends the process, or awaits something that never comes';
  return reportLast({ code: 'design-broken', given: 'the design file', subject: '', because }, argv);
}

/** What is told when there is no command any more that could tell it. */
function reportLast(complaint: Complaint, argv: readonly string[]): Exit {
  const reporter = reporterFor({ json: argv.includes('--json'), quiet: false });
  const exit = exitOf([complaint]);
  reporter.problems([complaint], '');
  reporter.done(argv.find((word) => !word.startsWith('-')) ?? '', exit, {});
  return exit;
}
