import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll } from 'vitest';

/** A folder that goes away after the tests of a file. */
export function tempFolder(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'tablewright-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Writes a file with the folders above it; answers its path. */
export function put(folder: string, file: string, text: string): string {
  const at = path.join(folder, file);
  mkdirSync(path.dirname(at), { recursive: true });
  writeFileSync(at, text);
  return at;
}

/** Everything below a folder, hidden files too: path and hash of the bytes. */
export function contents(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .map((entry) => {
      const at = path.join(entry.parentPath, entry.name);
      const hash = entry.isFile() ? createHash('sha256').update(readFileSync(at)).digest('hex') : 'folder';
      return `${path.relative(folder, at)} ${hash}`;
    })
    .toSorted();
}
