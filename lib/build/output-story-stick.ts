import { storySticks } from '../derive/drawings/sheets/story-stick.ts';
import { stickPages, stickRoll } from '../derive/drawings/sheets/story-stick-pages.ts';
import { stickName } from '../derive/drawings/sheets/story-stick-sheet.ts';
import { PRINT_PAPERS } from '../derive/templates/print-papers.ts';
import type { Page } from '../drawing/page.ts';
import { writePdf } from '../writers/pdf.ts';
import type { Assets } from './assets.ts';
import type { Job } from './job.ts';
import type { Files } from './output.ts';
import { headingOf } from './output-templates.ts';

/** The story stick of the top at full size: in pieces on either office paper, and whole for a roll. No file without tenons. */
export async function storyStickFiles(job: Job, fonts: Assets['fonts']): Promise<Files> {
  const heading = headingOf(job);
  const { title, date, warning } = heading;
  const files: Files = new Map();
  for (const [k, stick] of storySticks(job.assembly).entries()) {
    const sets: readonly (readonly [string, readonly Page[]])[] = [
      ...PRINT_PAPERS.map((paper) => [paper.name, stickPages(stick, paper, heading)] as const),
      ['roll', [stickRoll(stick, heading)]],
    ];
    const info = { title: [title, 'story stick', warning].filter((one) => one !== undefined).join('; '), date };
    for (const [name, pages] of sets) files.set(`${stickName(k)}-${name}.pdf`, await writePdf(pages, info, fonts));
  }
  return files;
}
