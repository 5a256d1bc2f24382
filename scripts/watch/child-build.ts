import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const CLI = fileURLToPath(new URL('../cli.ts', import.meta.url));

/** A build in a process of its own: only there is every changed file loaded afresh. */
export interface ChildBuild {
  /** Exit code; undefined when it was stopped by a signal. */
  readonly ended: Promise<number | undefined>;
  /** Stops it; it tidies up after itself. */
  stop(): void;
}

export function childBuild(args: readonly string[]): ChildBuild {
  const child: ChildProcess = spawn(process.execPath, [...process.execArgv, CLI, 'build', ...args], {
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  const ended = new Promise<number | undefined>((resolve, reject) => {
    child.on('error', reject);
    child.on('exit', (code) => resolve(code ?? undefined));
  });
  return { ended, stop: () => void child.kill('SIGINT') };
}
