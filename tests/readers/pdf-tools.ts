import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** One page as pixels: 0 is ink, 255 paper; rows from the top. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly gray: Uint8Array;
}

/** A word with the box around it, points from the upper left corner of its page. */
export interface PdfWord {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What qpdf and poppler (Debian's `qpdf` and `poppler-utils`) say of a file. */
export interface PdfReader {
  /** Complaints of qpdf, empty for a sound file. */
  readonly faults: string;
  /** Width and height of every page in points. */
  readonly sizes: readonly (readonly [number, number])[];
  /** Name and whether it is embedded, of every font. */
  readonly fonts: readonly (readonly [name: string, embedded: boolean])[];
  readonly info: Readonly<Record<string, string>>;
  text(page?: number): string;
  words(page: number): readonly PdfWord[];
  raster(page: number, dpi: number): Raster;
  /** The objects of the file, unpacked. */
  objects(): string;
}

const has = (tool: string, flag: string): boolean => spawnSync(tool, [flag]).error === undefined;

/** Whether the tools are here. */
export const hasPdfTools = (): boolean =>
  has('qpdf', '--version') && ['pdfinfo', 'pdffonts', 'pdftotext', 'pdftoppm'].every((tool) => has(tool, '-v'));

function run(tool: string, args: readonly string[], good = [0]): Buffer {
  const { status, stdout, stderr } = spawnSync(tool, args, { maxBuffer: 1 << 28 });
  if (!good.includes(status ?? -1)) throw new Error(`${tool} ${args.join(' ')} stopped with ${status}: ${stderr}`);
  return stdout;
}

/** Reads a file for as long as `use` runs. */
export function withPdf<T>(bytes: Uint8Array, use: (pdf: PdfReader) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'pdf-'));
  const file = join(folder, 'sheet.pdf');
  try {
    writeFileSync(file, bytes);
    return use(reader(file));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function reader(file: string): PdfReader {
  const check = spawnSync('qpdf', ['--check', file], { encoding: 'utf8' });
  const details = run('pdfinfo', ['-f', '1', '-l', '999', file]).toString();
  const fonts = run('pdffonts', [file]).toString().trim().split('\n').slice(2);
  return {
    faults: check.status === 0 ? '' : check.stdout + check.stderr,
    sizes: [...details.matchAll(/^Page +\d+ size: +([\d.]+) x ([\d.]+)/gm)].map((m) => [Number(m[1]), Number(m[2])]),
    fonts: fonts.map((line) => [line.split(' ')[0]!, /\byes yes yes +\d+ +\d+$/.test(line.trim())]),
    info: Object.fromEntries([...details.matchAll(/^(\w[\w ]*): +(.*)$/gm)].map((m) => [m[1]!, m[2]!])),
    text: (page) =>
      run('pdftotext', ['-layout', ...(page ? ['-f', `${page}`, '-l', `${page}`] : []), file, '-']).toString(),
    words: (page) => wordsIn(run('pdftotext', ['-bbox', '-f', `${page}`, '-l', `${page}`, file, '-']).toString()),
    raster: (page, dpi) => pgm(run('pdftoppm', ['-gray', '-r', `${dpi}`, '-f', `${page}`, '-l', `${page}`, file])),
    objects: () => run('qpdf', ['--qdf', '--object-streams=disable', file, '-'], [0, 3]).toString('latin1'),
  };
}

const wordsIn = (xml: string): PdfWord[] =>
  [...xml.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">(.*?)<\/word>/g)].map(
    (m) => ({
      text: m[5]!,
      left: Number(m[1]),
      top: Number(m[2]),
      right: Number(m[3]),
      bottom: Number(m[4]),
    }),
  );

/** A binary gray map: "P5", width, height, 255, then a byte a pixel. */
function pgm(bytes: Buffer): Raster {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 64).toString('latin1'));
  if (!head) throw new Error('this is no binary gray map');
  const [width, height] = [Number(head[1]), Number(head[2])];
  return { width, height, gray: new Uint8Array(bytes.subarray(head[0].length, head[0].length + width * height)) };
}
