import type { Job } from '../../lib/build/job.ts';
import type { SheetMaker } from '../../lib/derive/drawings/sheets/sheet-source.ts';
import { makeSheet } from '../../lib/drawing/make-sheet.ts';
import { PAPERS, type PaperSize } from '../../lib/drawing/paper.ts';
import type { SetHeading, Sheet } from '../../lib/drawing/sheet.ts';
import { defineSite } from '../../lib/shop/site.ts';

/** The sheets of one kind alone, as they are in the set of the piece. */
export function sheetsBy(maker: SheetMaker, { assembly, nominal, shapes, design }: Job, paper?: PaperSize): Sheet[] {
  const { units, title } = design;
  const heading: SetHeading = {
    paper: PAPERS[paper ?? (units === 'in' ? 'B' : 'A3')],
    projection: units === 'in' ? 'third' : 'first',
    lengths: units,
    owner: '',
    piece: title,
    number: '',
    revision: 'A',
    date: '2026-01-01',
  };
  const source = { assembly, nominal, shapes, site: defineSite(design.site), units, finish: '' };
  return maker(source, heading).map((plan, k, all) => makeSheet(plan, { ...heading, sheet: k + 1, of: all.length }));
}
