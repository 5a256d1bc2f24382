import type { Command } from '../command.ts';
import { OPTIONS, type OptionName, optionUsage } from '../line/options.ts';

/** How the command is started from the folder of the package. */
export const PROGRAM = 'npm start --';

/** What stands behind a command on a line. */
const usageOf = ({ name, args }: Command): string => [name, args.usage, '[options]'].filter(Boolean).join(' ');

/** Options that go with every command. */
const COMMON: readonly OptionName[] = ['help', 'version'];

/** All commands. */
export function generalHelp(commands: readonly Command[]): string {
  return [
    'Turns a design file into everything a shop needs to make the piece.',
    '',
    `usage: ${PROGRAM} <command> [options]`,
    '',
    ...aligned(commands.map((command) => [[command.name, command.args.usage].join(' ').trim(), command.summary])),
    '',
    ...aligned(COMMON.map((name) => [optionUsage(name), OPTIONS[name].summary])),
    '',
    `A design is the name of a folder in designs/, or the path of a design file. "${PROGRAM} <command> --help" tells more.`,
  ].join('\n');
}

/** One command with its options. */
export function commandHelp(command: Command): string {
  return [
    command.summary,
    '',
    `usage: ${PROGRAM} ${usageOf(command)}`,
    '',
    ...aligned([...command.options, 'help' as const].map((name) => [optionUsage(name), OPTIONS[name].summary])),
    '',
    'examples:',
    ...command.examples.map((example) => `  ${PROGRAM} ${example}`),
  ].join('\n');
}

function aligned(rows: readonly (readonly string[])[]): string[] {
  const width = Math.max(...rows.map(([name = '']) => name.length));
  return rows.map(([name = '', text = '']) => `  ${name.padEnd(width)}  ${text}`);
}
