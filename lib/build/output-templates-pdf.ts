import { PRINT_PAPERS } from '../derive/templates/print-papers.ts';
import { rollPage } from '../derive/templates/roll-page.ts';
import { tilePages } from '../derive/templates/tile-pages.ts';
import type { Page } from '../drawing/page.ts';
import { writePdf } from '../writers/pdf.ts';
import type { Assets } from './assets.ts';
import { pieceFileName } from './file-names.ts';
import type { Job } from './job.ts';
import type { Files } from './output.ts';
import { headingOf, templatesOf } from './output-templates.ts';

/** Three files a template: in sheets of either office paper, and whole for a roll. */
export async function templatePdfs(job: Job, fonts: Assets['fonts']): Promise<Files> {
  const heading = headingOf(job);
  const files: Files = new Map();
  for (const template of templatesOf(job)) {
    const { title, date, warning } = heading;
    const sets: readonly (readonly [string, readonly Page[]])[] = [
      ...PRINT_PAPERS.map((paper) => [paper.name, tilePages(template, paper, heading)] as const),
      ['roll', [rollPage(template, heading)]],
    ];
    for (const [name, pages] of sets) {
      const file = pieceFileName(template.part);
      const info = {
        title: [title, template.drawn.title, warning].filter((one) => one !== undefined).join('; '),
        date,
      };
      files.set(`templates/${file}-${name}.pdf`, await writePdf(pages, info, fonts));
    }
  }
  return files;
}
