import { readFileSync } from 'node:fs';
import { COMMANDS } from './commands.ts';
import { EXIT, type Exit } from './exit.ts';
import { readLine } from './line/read-line.ts';
import { commandHelp, generalHelp } from './report/help-text.ts';
import { exitOf } from './report/problem.ts';
import { reporterFor } from './report/reporter.ts';

/** Runs one command line; answers its exit code. */
export async function main(argv: readonly string[]): Promise<Exit> {
  const { command, args, options, complaints } = readLine(argv, COMMANDS);
  const reporter = reporterFor(options);
  const name = command?.name ?? '';
  const end = (exit: Exit, json: object = {}): Exit => {
    reporter.done(name, exit, json);
    return exit;
  };
  if (complaints.length > 0) {
    reporter.problems(complaints, 'nothing was done');
    return end(exitOf(complaints));
  }
  if (options.version) {
    reporter.result(`tablewright ${version()}`);
    return end(EXIT.good, { version: version() });
  }
  if (options.help) {
    const help = command ? commandHelp(command) : generalHelp(COMMANDS);
    reporter.result(help);
    return end(EXIT.good, { help });
  }
  if (!command) {
    const help = generalHelp(COMMANDS);
    if (!options.json) process.stderr.write(`${help}\n`);
    return end(EXIT.wrongUse, { help });
  }
  const { exit, json } = await command.run({ args, options, reporter });
  return end(exit, json);
}

function version(): string {
  return JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')).version;
}
