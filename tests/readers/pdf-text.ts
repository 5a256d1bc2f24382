import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Of Debian's poppler-utils. */
const PDFTOTEXT = '/usr/bin/pdftotext';

/** The text of every page of a PDF as poppler lays it out, or nothing when poppler is not installed here. */
export function pagesOf(pdf: Uint8Array): readonly string[] | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'pdf-text-'));
  try {
    const path = join(folder, 'a.pdf');
    writeFileSync(path, pdf);
    const run = spawnSync(PDFTOTEXT, ['-layout', path, '-'], { encoding: 'utf8' });
    if (run.error) return undefined;
    if (run.status !== 0) throw new Error(`pdftotext stopped with code ${run.status}: ${run.stderr}`);
    return run.stdout.split('\f').slice(0, -1);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
