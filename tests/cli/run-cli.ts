import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface Ended {
  /** Exit code; null when a signal ended it. */
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Running {
  readonly child: ChildProcess;
  readonly ended: Promise<Ended>;
}

/** Plain text whatever the tests themselves run in. */
const { FORCE_COLOR: _, ...ENV } = process.env;

/** Starts the command line, or another script of the package, in a process of its own. */
export function start(args: readonly string[], script = 'scripts/cli.ts', env: NodeJS.ProcessEnv = {}): Running {
  const child = spawn(process.execPath, ['--import', 'tsx', script, ...args], { cwd: ROOT, env: { ...ENV, ...env } });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text) => {
    err += text;
  });
  const ended = new Promise<Ended>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
  });
  return { child, ended };
}

/** So many processes at a time; more would only wait for each other. */
const PLACES = 3;
let free = PLACES;
const waiting: (() => void)[] = [];

/** Runs the command line to its end, a few at a time. */
export async function run(args: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<Ended> {
  if (free === 0) await new Promise<void>((go) => waiting.push(go));
  else free -= 1;
  try {
    return await start(args, 'scripts/cli.ts', env).ended;
  } finally {
    const next = waiting.shift();
    if (next) next();
    else free += 1;
  }
}
