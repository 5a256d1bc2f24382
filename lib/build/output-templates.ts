import type { Heading } from '../derive/templates/heading.ts';
import { type Template, templates } from '../derive/templates/templates.ts';
import { writeDxf } from '../writers/dxf.ts';
import { writeSvg } from '../writers/svg.ts';
import { pieceFileName } from './file-names.ts';
import { warningOf } from './forced.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';

export function templateFiles(job: Job): Files {
  return new Map(
    templatesOf(job).flatMap(({ part, drawing }): [string, Uint8Array][] => [
      [`templates/${pieceFileName(part)}.dxf`, textFile(writeDxf(drawing))],
      [`templates/${pieceFileName(part)}.svg`, textFile(writeSvg(drawing))],
    ]),
  );
}

const made = new WeakMap<Job, readonly Template[]>();

/** The templates of a job, laid out once for all outputs. */
export function templatesOf(job: Job): readonly Template[] {
  const known = made.get(job) ?? templates(job.assembly, headingOf(job), job.nominal);
  made.set(job, known);
  return known;
}

/** What every template is lettered with. */
export function headingOf(job: Job): Heading {
  const { title, revision, date, units } = job.design;
  const { bitLength } = job.shop.machines;
  const warning = warningOf(job);
  return { title, revision, date, units, bitLength, ...(warning === undefined ? {} : { warning }) };
}
