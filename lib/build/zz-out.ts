import { sheetSet } from '../derive/drawings/sheets/sheet-set.ts';
import type { SheetSource } from '../derive/drawings/sheets/sheet-source.ts';
import { PAPERS, type PaperSet, USUAL_PAPER } from '../drawing/paper.ts';
import { inLetters } from '../drawing/plain-letters.ts';
import type { SetHeading, Sheet } from '../drawing/sheet.ts';
import { defineSheets } from '../shop/sheets.ts';
import { defineSite } from '../shop/site.ts';
import { writeDxf } from '../writers/dxf.ts';
import { writeSvg } from '../writers/svg.ts';
import { warningOf } from './forced.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';

const made = new WeakMap<Job, readonly Sheet[]>();

/** All shop drawings of a job, drawn once for all their formats. */
export function sheetsOf(job: Job): readonly Sheet[] {
  const before = made.get(job);
  if (before) return before;
  const sheets = sheetSet(sourceOf(job), headingOf(job));
  made.set(job, sheets);
  return sheets;
}

/** Every sheet in its own files: true mm of the model in DXF, paper mm in SVG. */
export function drawingFiles(job: Job): Files {
  return new Map(
    sheetsOf(job).flatMap((sheet): [string, Uint8Array][] => [
      [`drawings/${sheet.name}.dxf`, textFile(writeDxf(inLetters(sheet.drawing, 'ascii')))],
      [`drawings/${sheet.name}.svg`, textFile(sheetSvg(sheet))],
    ]),
  );
}

/** The whole paper, fractions as fractions. */
export function sheetSvg({ drawing, paper, scale }: Sheet): string {
  const window = { min: [0, 0], max: [paper.width * scale, paper.height * scale] } as const;
  return writeSvg(drawing, { window, fractions: 'built' });
}

export function sourceOf({ assembly, nominal, records, shapes, design }: Job): SheetSource {
  const { finish } = defineSheets(design.sheets);
  const measured = records.underside?.date;
  return {
    assembly,
    nominal,
    ...(measured === undefined ? {} : { measured }),
    shapes,
    site: defineSite(design.site),
    units: design.units,
    finish,
  };
}

export function headingOf(job: Job): SetHeading {
  const { title, number = '', revision, date, units, sheets: given } = job.design;
  const { owner, set, paper, projection, lengths } = defineSheets(given);
  const usual: PaperSet = set === 'usual' ? (units === 'in' ? 'us' : 'iso') : set;
  const chosen = PAPERS[paper === 'usual' ? USUAL_PAPER[usual] : paper];
  const warning = warningOf(job);
  return {
    paper: chosen,
    projection: projection === 'usual' ? (chosen.set === 'us' ? 'third' : 'first') : projection,
    lengths: lengths === 'usual' ? units : lengths,
    owner,
    piece: title,
    number,
    revision,
    date,
    ...(warning === undefined ? {} : { warning }),
  };
}
