import { parseArgs } from 'node:util';
import { nearMiss } from '../../lib/params/near-miss.ts';
import { isOption, OPTIONS, type OptionName } from './options.ts';

/** An option as it stands on the line. */
export interface GivenOption {
  /** As typed: `--set`, `-x`. */
  readonly raw: string;
  /** Undefined when there is no such option. */
  readonly name: OptionName | undefined;
  readonly value: string | undefined;
  /** The value came behind a `=`. */
  readonly inline: boolean;
}

export interface Tokens {
  readonly words: readonly string[];
  readonly options: readonly GivenOption[];
}

const CONFIG = Object.fromEntries([
  ...Object.entries(OPTIONS).map(([name, { value }]) => [
    name,
    { type: value ? ('string' as const) : ('boolean' as const), multiple: true },
  ]),
]);

/** Cuts the command line into words and options; whether they make sense is asked later, of all of them at once. */
export function tokensOf(argv: readonly string[]): Tokens {
  const args = argv.map((arg) => (arg === '-h' ? '--help' : arg));
  const { tokens } = parseArgs({ args, options: CONFIG, strict: false, allowPositionals: true, tokens: true });
  const words: string[] = [];
  const options = new Map<number, GivenOption>();
  const values = new Set<number>();
  for (const token of tokens) {
    if (token.kind === 'positional' && !values.has(token.index)) words.push(token.value);
    if (token.kind !== 'option' || options.has(token.index)) continue;
    // A dash stands for a forgotten value only when it did not come behind a `=`.
    const given = optionOf(args[token.index]!, token.name, token.value, token.inlineValue === true);
    options.set(token.index, given);
    if (!given.name && !given.inline && meantWithValue(token.name)) values.add(token.index + 1);
  }
  return { words, options: [...options.values()] };
}

function optionOf(arg: string, name: string, value: string | undefined, inline: boolean): GivenOption {
  const raw = arg.startsWith('--') ? `--${name}` : arg;
  const known = arg.startsWith('--') && isOption(name) ? name : undefined;
  return { raw, name: known, value, inline };
}

/** Whether a misspelt option was one with a value: then the word behind it is no design. */
function meantWithValue(name: string): boolean {
  const meant = nearMiss(name, Object.keys(OPTIONS));
  return meant !== undefined && isOption(meant) && OPTIONS[meant].value !== undefined;
}
