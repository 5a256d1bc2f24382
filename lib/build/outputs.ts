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
    name: 'lumber',
    summary: 'what to buy; with boards.csv also the strip plan of the top and the cut plan of the rest (CSV, SVG)',
    files: async (job) => (await import('./output-lumber.ts')).lumberFiles(job),
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
    name: 'templates',
    summary: 'the same templates to print: in sheets of letter and A4 paper, and on a roll (PDF)',
    needs: 'fonts',
    files: async (job, { fonts }) => (await import('./output-templates-pdf.ts')).templatePdfs(job, fonts),
  },
  {
    name: 'drawings',
    summary: 'shop drawings, a sheet in each file (DXF and SVG)',
    files: async (job) => (await import('./output-drawings.ts')).drawingFiles(job),
  },
  {
    name: 'drawings-pdf',
    summary: 'shop drawings, all sheets to print (PDF)',
    needs: 'fonts',
    files: async (job, { fonts }) => (await import('./output-drawings-pdf.ts')).drawingsPdf(job, fonts),
  },
  {
    name: 'story-stick',
    summary: 'a stick at full size with the slots of the top, to print and glue on a lath (PDF)',
    needs: 'fonts',
    files: async (job, { fonts }) => (await import('./output-story-stick.ts')).storyStickFiles(job, fonts),
  },
  {
    name: 'picture',
    summary: 'a picture of the whole piece (SVG)',
    files: async (job) => (await import('./output-picture.ts')).pictureFile(job),
  },
  {
    name: 'still',
    summary: 'the whole piece in the color of its wood, without lettering (PNG, SVG)',
    files: async (job) => (await import('./output-preview.ts')).stillFiles(job),
  },
  {
    name: 'glb',
    summary: 'the whole piece for 3-D viewers, a named node for each part (GLB, metres)',
    files: async (job) => (await import('./output-exchange.ts')).glbFile(job),
  },
  {
    name: '3mf',
    summary: 'the whole piece for printers of models (3MF, mm)',
    files: async (job) => (await import('./output-exchange.ts')).threeMfFile(job),
  },
  {
    name: 'preview',
    summary: 'a page for the client: the piece to turn about, sizes, chairs, people, still pictures (HTML)',
    needs: 'pages',
    files: async (job, assets) => (await import('./output-preview.ts')).previewFile(job, assets),
  },
  {
    name: 'bench',
    summary: 'a live page: every value as a field, picture, checks and cut list follow at once (HTML)',
    needs: 'pages',
    files: async (job, assets) => (await import('./output-bench.ts')).benchFile(job, assets),
  },
];
