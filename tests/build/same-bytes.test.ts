import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const folders: string[] = [];

/** SHA-256 of every file that a build in its own process writes, by path. */
async function build(env: NodeJS.ProcessEnv, cwd: string): Promise<Record<string, string>> {
  const out = mkdtempSync(join(tmpdir(), 'papers-'));
  folders.push(out);
  const tsx = join(ROOT, 'node_modules/tsx/dist/cli.mjs');
  const args = [tsx, join(ROOT, 'scripts/cli.ts'), 'build', 'reading-table', 'study-table', '--out', out, '--quiet'];
  await promisify(execFile)(process.execPath, args, { cwd, env: { ...process.env, ...env } });
  const paths = readdirSync(out, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return Object.fromEntries(
    paths.map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return [path.slice(out.length), createHash('sha256').update(readFileSync(path)).digest('hex')];
    }),
  );
}

afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

describe('the same design', () => {
  it('gives the same bytes in another process, time zone, language and folder', async () => {
    const [one, two] = await Promise.all([
      build({ TZ: 'UTC', LANG: 'C', LC_ALL: 'C' }, ROOT),
      build({ TZ: 'Asia/Kolkata', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' }, tmpdir()),
    ]);
    expect(Object.keys(one).length).toBeGreaterThan(60);
    expect(two).toEqual(one);
  });
});
