import type { Page } from '../drawing/page.ts';
import { place } from '../drawing/place.ts';
import { inLetters } from '../drawing/plain-letters.ts';
import { writePdf } from '../writers/pdf.ts';
import type { Assets } from './assets.ts';
import type { Job } from './job.ts';
import type { Files } from './output.ts';
import { sheetsOf } from './output-drawings.ts';

/** All sheets in one file, each on paper of its own size. */
export async function drawingsPdf(job: Job, fonts: Assets['fonts']): Promise<Files> {
  const { title, date } = job.design;
  const pages = sheetsOf(job).map(
    ({ title: name, paper, drawing }): Page => ({
      name,
      width: paper.width,
      height: paper.height,
      marks: place(inLetters(drawing, 'latin'), [0, 0]),
    }),
  );
  return new Map([['drawings.pdf', await writePdf(pages, { title: `${title}, shop drawings`, date }, fonts)]]);
}
