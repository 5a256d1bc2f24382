import { Console } from 'node:console';
import { EXIT } from './exit.ts';
import { main } from './main.ts';
import { reportBug, reportUnfinished } from './report/report-bug.ts';

const argv = process.argv.slice(2);

// A design that prints something must not spoil the results on stdout.
globalThis.console = new Console(process.stderr);

// A reader that has seen enough (`list | head -1`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

process.on('uncaughtException', (error) => process.exit(reportBug(error, argv)));

Error.stackTraceLimit = 50;

// Node just ends when it waits for something that can no longer come.
let finished = false;
process.on('exit', (code) => {
  if (!finished && (code === EXIT.good || code === UNSETTLED)) process.exitCode = reportUnfinished(argv);
});
const UNSETTLED = 13;

process.exitCode = await main(argv).catch((error: unknown) => reportBug(error, argv));
finished = true;
