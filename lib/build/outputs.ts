import type { Output } from './output.ts';

/** Everything a design can be turned into, in the order in which it is made. */
export const OUTPUTS: readonly Output[] = [
  {
    name: 'model',
    summary: 'the assembly and its numbers, for other programs (JSON)',
    files: async (job) => (await import('./output-model.ts')).modelFile(job),
  },
  {
    name: 'lists',
    summary: 'cut list and bill of materials (CSV, JSON)',
    files: async (job) => (await import('./output-lists.ts')).listFiles(job),
  },
  {
    name: 'findings',
    summary: 'what the checks say, and cautions: a page to read or print (HTML), and data (JSON)',
    files: async (job) => (await import('./output-findings.ts')).findingsFiles(job),
  },
  {
    name: 'stl',
    summary: 'every part and the whole piece as solids (STL, mm)',
    files: async (job) => (await import('./output-solids.ts')).solidFiles(job),
  },
  {
    name: 'dxf',
    summary: 'full-size templates of the parts that meet the underside (DXF and SVG)',
    files: async (job) => (await import('./output-templates.ts')).templateFiles(job),
  },
  {
    name: 'picture',
    summary: 'a picture of the whole piece (SVG)',
    files: async (job) => (await import('./output-picture.ts')).pictureFile(job),
  },
];
