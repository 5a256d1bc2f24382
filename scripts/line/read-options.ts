import type { UnitSystem } from 'tablewright';
import { nearMiss } from '../../lib/params/near-miss.ts';
import type { Command } from '../command.ts';
import type { Complaint } from '../report/complaint.ts';
import { OPTIONS, type OptionName, type OptionSpec, type Options } from './options.ts';
import type { GivenOption } from './tokens.ts';

/** Options that every command knows, and that mean something without one. */
const ALWAYS: ReadonlySet<OptionName> = new Set(['help', 'version']);

/** The options of a command, and all that is wrong with them. Without a command any option may stand. */
export function readOptions(
  given: readonly GivenOption[],
  command: Command | undefined,
  commands: readonly Command[],
): { readonly options: Options; readonly complaints: readonly Complaint[] } {
  const values = new Map<OptionName, string[]>();
  const complaints: Complaint[] = [];
  for (const one of given) {
    const complaint = complaintOf(one, command, commands);
    if (complaint) complaints.push(complaint);
    if (one.name) values.set(one.name, [...(values.get(one.name) ?? []), one.value ?? '']);
  }
  complaints.push(...repeated(values));
  return { options: optionsOf(values), complaints };
}

function complaintOf(
  given: GivenOption,
  command: Command | undefined,
  commands: readonly Command[],
): Complaint | undefined {
  const { raw, name } = given;
  if (!name) return unknownOption(raw, command);
  if (command && !ALWAYS.has(name) && !command.options.includes(name)) {
    const options = commands.filter((one) => one.options.includes(name)).map((one) => one.name);
    return { code: 'option-not-here', given: raw, subject: command.name, options };
  }
  return valueComplaint(given, OPTIONS[name]);
}

function unknownOption(given: string, command: Command | undefined): Complaint {
  const meant = nearMiss(given.replace(/^-+/, ''), Object.keys(OPTIONS));
  const options = (command?.options ?? Object.keys(OPTIONS)).map((option) => `--${option}`);
  const didYouMean = meant && `--${meant}`;
  return { code: 'unknown-option', given, subject: command?.name ?? '', options, didYouMean };
}

function valueComplaint({ raw, value, inline }: GivenOption, spec: OptionSpec): Complaint | undefined {
  const { choices, example } = spec;
  if (!spec.value) {
    return inline ? { code: 'value-not-wanted', given: value ?? '', subject: raw, try: raw } : undefined;
  }
  if (!value || (!inline && value.startsWith('-'))) {
    const because = value ? `${JSON.stringify(value)} behind it is an option` : undefined;
    return { code: 'value-missing', given: raw, subject: '', because, try: example };
  }
  if (!choices || choices.includes(value)) return undefined;
  const didYouMean = nearMiss(value, choices);
  return { code: 'not-a-choice', given: value, subject: raw, options: choices, didYouMean, try: example };
}

function repeated(values: ReadonlyMap<OptionName, readonly string[]>): Complaint[] {
  return [...values].flatMap(([name, all]): Complaint[] => {
    const several = new Set(all).size > 1 && !OPTIONS[name].repeatable;
    return several ? [{ code: 'given-twice', given: all.join(' and '), subject: `--${name}` }] : [];
  });
}

function optionsOf(values: ReadonlyMap<OptionName, readonly string[]>): Options {
  const last = (name: OptionName): string | undefined => values.get(name)?.at(-1);
  return {
    set: values.get('set') ?? [],
    params: last('params'),
    vary: values.get('vary') ?? [],
    chart: last('chart'),
    milled: values.get('milled') ?? [],
    out: last('out'),
    port: last('port'),
    units: last('units') as UnitSystem | undefined,
    only: values.get('only')?.flatMap((names) => names.split(',').map((name) => name.trim())),
    json: values.has('json'),
    quiet: values.has('quiet'),
    strict: values.has('strict'),
    force: values.has('force'),
    all: values.has('all'),
    help: values.has('help'),
    version: values.has('version'),
  };
}
