import { templates } from '../derive/templates/templates.ts';
import { writeDxf } from '../writers/dxf.ts';
import { writeSvg } from '../writers/svg.ts';
import { pieceFileName } from './file-names.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';

export function templateFiles({ assembly, design }: Job): Files {
  return new Map(
    templates(assembly, design).flatMap(({ part, drawing }): [string, Uint8Array][] => [
      [`templates/${pieceFileName(part)}.dxf`, textFile(writeDxf(drawing))],
      [`templates/${pieceFileName(part)}.svg`, textFile(writeSvg(drawing))],
    ]),
  );
}
