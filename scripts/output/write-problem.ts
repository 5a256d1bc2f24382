import { fileReason } from '../report/file-reason.ts';
import type { Problem } from '../report/problem.ts';
import { shownPath } from '../report/shown-path.ts';
import { OutsideFolder, StrangerInFolder } from './out-folder.ts';

/** Why a folder could not be written, as a problem; undefined for what is no matter of folders. */
export function writeProblem(error: unknown, target: string): Problem | undefined {
  const shown = shownPath(target);
  if (error instanceof OutsideFolder) return { code: 'outside', given: error.message, subject: shown };
  if (error instanceof StrangerInFolder) {
    const given = `${shown}/${error.message}`;
    return { code: 'not-ours', given, subject: shown, try: 'moving it elsewhere, or --out with another folder' };
  }
  const because = fileReason(error);
  if (because === undefined) return undefined;
  return { code: 'not-writable', given: shown, subject: '', because, try: '--out with a folder that can be written' };
}
