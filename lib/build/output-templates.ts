import { templates } from '../derive/templates/templates.ts';
import { writeDxf } from '../writers/dxf.ts';
import { writeSvg } from '../writers/svg.ts';
import { pieceFileName } from './file-names.ts';
import { warningOf } from './forced.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';

export function templateFiles(job: Job): Files {
  const { assembly, design } = job;
  const { title, revision, date, units } = design;
  const warning = warningOf(job);
  const heading = { title, revision, date, units, ...(warning === undefined ? {} : { warning }) };
  return new Map(
    templates(assembly, heading).flatMap(({ part, drawing }): [string, Uint8Array][] => [
      [`templates/${pieceFileName(part)}.dxf`, textFile(writeDxf(drawing))],
      [`templates/${pieceFileName(part)}.svg`, textFile(writeSvg(drawing))],
    ]),
  );
}
