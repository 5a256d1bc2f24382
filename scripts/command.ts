import type { Exit } from './exit.ts';
import type { OptionName, Options } from './line/options.ts';
import type { Reporter } from './report/reporter.ts';

/** One row of the table of commands: help, the README and the reading of the command line all come from it. */
export interface Command {
  readonly name: string;
  readonly summary: string;
  readonly args: Arguments;
  /** Besides `--help`. */
  readonly options: readonly OptionName[];
  /** Without the name of the program. */
  readonly examples: readonly string[];
  /** Loads what is heavy when it is called, not before: help and a slip of the pen are answered at once. */
  run(call: Call): Promise<Result>;
}

export interface Arguments {
  /** `<design>`, `[design…]`, empty for none. */
  readonly usage: string;
  readonly min: number;
  readonly max: number;
}

export const NO_ARGUMENTS: Arguments = { usage: '', min: 0, max: 0 };
export const ONE_DESIGN: Arguments = { usage: '<design>', min: 1, max: 1 };
export const ANY_DESIGNS: Arguments = { usage: '[design…]', min: 0, max: Number.POSITIVE_INFINITY };

export interface Call {
  readonly args: readonly string[];
  readonly options: Options;
  readonly reporter: Reporter;
}

export interface Result {
  readonly exit: Exit;
  /** What `--json` prints besides the problems. */
  readonly json: object;
}
