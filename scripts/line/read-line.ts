import { nearMiss } from '../../lib/params/near-miss.ts';
import type { Command } from '../command.ts';
import type { Complaint } from '../report/complaint.ts';
import type { Options } from './options.ts';
import { readOptions } from './read-options.ts';
import { tokensOf } from './tokens.ts';

export interface Line {
  /** Undefined when none was named, or an unknown one. */
  readonly command: Command | undefined;
  readonly args: readonly string[];
  readonly options: Options;
  /** All that is wrong with the line itself, in the order of command, options, arguments. */
  readonly complaints: readonly Complaint[];
}

/** Reads the command line against the table of commands. */
export function readLine(argv: readonly string[], commands: readonly Command[]): Line {
  const tokens = tokensOf(argv);
  const [name, ...args] = tokens.words;
  const command = commands.find((one) => one.name === name);
  const { options, complaints } = readOptions(tokens.options, command, commands);
  const stray = name === undefined || command ? [] : [unknownCommand(name, commands)];
  const counted = command && !options.help ? miscounted(command, args) : [];
  return { command, args, options, complaints: [...stray, ...complaints, ...counted] };
}

function unknownCommand(given: string, commands: readonly Command[]): Complaint {
  const options = commands.map((one) => one.name);
  const didYouMean = nearMiss(given, [...options, 'help']);
  const meant = didYouMean === 'help' ? '--help' : didYouMean;
  return { code: 'unknown-command', given, subject: '', options, didYouMean: meant };
}

function miscounted({ name, args: { max } }: Command, args: readonly string[]): Complaint[] {
  return args.slice(max).map((given) => ({
    code: 'too-many-arguments',
    given,
    subject: name,
    because: max === 0 ? `${name} takes no arguments` : 'it takes one',
    try: given.includes('=') ? `--set "${given}"` : undefined,
  }));
}
