import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { clearLeftovers } from './leftovers.ts';
import { MADE_BY, madeBy, strangersIn } from './made-by.ts';

/** Where output goes unless told otherwise. */
export const OUT_FOLDER = fileURLToPath(new URL('../../out', import.meta.url));

/** The output folder of a design while it is being made: all new files beside the old ones, swapped in at the end. */
export interface OutFolder {
  /** Absolute, of the finished folder. */
  readonly target: string;
  /** Adds a file. @throws OutsideFolder when its path leads out of the folder. */
  write(file: string, bytes: Uint8Array): void;
  /** Puts the new folder in the place of the old one. @throws StrangerInFolder when something would be lost. */
  swapIn(): void;
  /** Forgets the new files; the old folder stays as it is. */
  discard(): void;
}

export class OutsideFolder extends Error {
  override readonly name = 'OutsideFolder';
}

export class StrangerInFolder extends Error {
  override readonly name = 'StrangerInFolder';
}

/** How often a swap is tried again when another build of the same design comes between. */
const TRIES = 5;

/** Opens the folder of a design below `out`, which is made when it is not there, and tidies up after dead builds. */
export function openOutFolder(out: string, name: string): OutFolder {
  const root = path.resolve(out);
  mkdirSync(root, { recursive: true });
  clearLeftovers(root);
  const target = path.join(root, name);
  const partial = path.join(root, `.${name}.${process.pid}.partial`);
  const aside = path.join(root, `.${name}.${process.pid}.old`);
  const written: string[] = [];
  const discard = (): void => rmSync(partial, { recursive: true, force: true });
  // Learns now, not after a long build, that nothing can be written; until there is something to write nothing stays.
  mkdirSync(partial);
  discard();
  return {
    target,
    discard,
    write(file, bytes) {
      if (!isInside(file)) throw new OutsideFolder(file);
      const at = path.join(partial, file);
      mkdirSync(path.dirname(at), { recursive: true });
      writeFileSync(at, bytes);
      written.push(file);
    },
    swapIn() {
      const [stranger] = strangersIn(target, written);
      if (stranger !== undefined) throw new StrangerInFolder(stranger);
      mkdirSync(partial, { recursive: true });
      writeFileSync(path.join(partial, MADE_BY), madeBy(written));
      for (let tries = TRIES; !swap(partial, target, aside, tries); tries -= 1);
      rmSync(aside, { recursive: true, force: true });
    },
  };
}

/** A path of plain names with "/" between. */
function isInside(file: string): boolean {
  return file !== '' && file.split('/').every((name) => !['', '.', '..'].includes(name) && !/[\\:\0]/.test(name));
}

/** Two renames; only between them is there no folder, and `clearLeftovers` knows how to mend that. */
function swap(partial: string, target: string, aside: string, tries: number): boolean {
  try {
    renameSync(target, aside);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
  }
  try {
    renameSync(partial, target);
    return true;
  } catch (error) {
    if (tries > 1 && (error as NodeJS.ErrnoException).code === 'ENOTEMPTY') {
      rmSync(aside, { recursive: true, force: true });
      return false;
    }
    if (existsSync(aside)) renameSync(aside, target);
    throw error;
  }
}
