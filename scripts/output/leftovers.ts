import { existsSync, readdirSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';

const LEFTOVER = /^\.(.+)\.(\d+)\.(partial|old)$/;

/** Removes what builds left that were killed; a finished folder that was just being replaced is put back. */
export function clearLeftovers(out: string): void {
  for (const entry of readdirSync(out)) {
    const [, name = '', pid = '', what] = LEFTOVER.exec(entry) ?? [];
    if (what === undefined || isAlive(Number(pid))) continue;
    const at = path.join(out, entry);
    const target = path.join(out, name);
    if (what === 'old' && !existsSync(target)) renameSync(at, target);
    else rmSync(at, { recursive: true, force: true });
  }
}

/** Whether a build with this process id may still be at work. A leftover under our own id is of a process long dead. */
function isAlive(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
