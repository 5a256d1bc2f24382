import type { UnitSystem } from 'tablewright';

/** What the command line may say besides the command and its designs. */
export interface Options {
  readonly set: readonly string[];
  readonly params: string | undefined;
  readonly vary: readonly string[];
  readonly chart: string | undefined;
  readonly milled: readonly string[];
  readonly out: string | undefined;
  readonly port: string | undefined;
  readonly units: UnitSystem | undefined;
  readonly only: readonly string[] | undefined;
  readonly json: boolean;
  readonly quiet: boolean;
  readonly strict: boolean;
  readonly force: boolean;
  readonly all: boolean;
  readonly help: boolean;
  readonly version: boolean;
}

export type OptionName = keyof Options;

export interface OptionSpec {
  readonly summary: string;
  /** What stands behind the option in help; absent for a switch. */
  readonly value?: string;
  readonly example?: string;
  readonly choices?: readonly string[];
  readonly repeatable?: boolean;
}

export const OPTIONS: { readonly [K in OptionName]: OptionSpec } = {
  set: {
    value: 'path=value',
    example: '--set "top.length=72 in"',
    repeatable: true,
    summary: 'another value for a parameter; may be repeated',
  },
  params: {
    value: 'file.json',
    example: '--params values.json',
    summary: 'values of parameters from a file, nested as in a design; --set wins over it',
  },
  vary: {
    value: 'path=values',
    example: '--vary "top.edgeThickness=1 in..1 1/2 in:5"',
    repeatable: true,
    summary: 'what the checks say over a range, from..to:count, or over values with commas between; two make a grid',
  },
  chart: {
    value: 'file.svg',
    example: '--chart edge.svg',
    summary: 'draws what --vary finds',
  },
  milled: {
    value: 'mark=thickness',
    example: '--milled "11=1 3/4 in"',
    repeatable: true,
    summary: 'what if a board of boards.csv came out of milling at another thickness; may be repeated',
  },
  out: {
    value: 'folder',
    example: '--out out',
    summary: 'where the folder of each design is put; default: out, beside package.json',
  },
  port: {
    value: 'number',
    example: '--port 8123',
    summary: 'where the live page is served, on this machine alone; default: any port that is free',
  },
  units: {
    value: 'in|mm',
    example: '--units mm',
    choices: ['in', 'mm'],
    summary: 'units of what is printed here, not of the papers; default: those of the design',
  },
  only: {
    value: 'names',
    example: '--only stl,dxf',
    repeatable: true,
    summary: 'make only these outputs, with commas between; the folder then holds nothing else',
  },
  json: { summary: 'one JSON document on stdout, problems included, and nothing else' },
  quiet: { summary: 'no progress and no summary; problems are still told' },
  strict: { summary: '"look again" counts as "change it"' },
  force: { summary: 'build in spite of "change it"; every paper then says so' },
  all: {
    summary: 'every finding, with value, limit, source, load and assumptions; with --vary a column for every check',
  },
  help: { summary: 'this text, or that of a command' },
  version: { summary: 'the version of tablewright' },
};

export const isOption = (name: string): name is OptionName => Object.hasOwn(OPTIONS, name);

/** `--set path=value` */
export function optionUsage(name: OptionName): string {
  const { value } = OPTIONS[name];
  return value ? `--${name} ${value}` : `--${name}`;
}
