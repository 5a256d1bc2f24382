import type { Command } from './command.ts';
import { COMMANDS } from './commands.ts';
import { OPTIONS, optionUsage } from './line/options.ts';
import { PROGRAM } from './report/help-text.ts';

/** The section of the README on the command line, written from the table of commands. */
export function readmeCommands(): string {
  return [
    'A design is the name of a folder in `designs/`, or the path of a design file anywhere.',
    '',
    ...COMMANDS.flatMap(section),
    '### Exit codes',
    '',
    '| code | meaning |',
    '| --- | --- |',
    '| 0 | good |',
    '| 1 | a check says "change it", or a product could not be made |',
    '| 2 | wrong use: command line, parameters or a design file |',
    '| 70 | a fault of tablewright, told with its stack |',
    '| 130 | stopped with Ctrl-C |',
  ].join('\n');
}

function section(command: Command): string[] {
  const { name, args, summary, options, examples } = command;
  return [
    `### ${[name, args.usage].join(' ').trim()}`,
    '',
    `${summary[0]!.toUpperCase()}${summary.slice(1)}.`,
    '',
    '```sh',
    ...examples.map((example) => `${PROGRAM} ${example}`),
    '```',
    '',
    '| option | |',
    '| --- | --- |',
    ...options.map((option) => `| \`${optionUsage(option).replace('|', '\\|')}\` | ${OPTIONS[option].summary} |`),
    '',
  ];
}
