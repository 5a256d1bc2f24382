import type { Output } from './output.ts';
import { findingsFile } from './output-findings.ts';
import { listFiles } from './output-lists.ts';
import { modelFile } from './output-model.ts';
import { pictureFile } from './output-picture.ts';
import { solidFiles } from './output-solids.ts';
import { templateFiles } from './output-templates.ts';

/** Everything a design can be turned into, in the order in which it is made. */
export const OUTPUTS: readonly Output[] = [
  { name: 'model', summary: 'the assembly and its numbers, for other programs (JSON)', files: modelFile },
  { name: 'lists', summary: 'cut list and bill of materials (CSV, JSON)', files: listFiles },
  { name: 'findings', summary: 'what the checks say (JSON)', files: findingsFile },
  { name: 'stl', summary: 'every part and the whole piece as solids (STL, mm)', files: solidFiles },
  { name: 'dxf', summary: 'full-size templates of the parts that meet the underside (DXF)', files: templateFiles },
  { name: 'picture', summary: 'a picture of the whole piece (SVG)', files: pictureFile },
];
