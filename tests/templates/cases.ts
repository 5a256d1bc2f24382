import { type Changes, type DesignName, written } from '../written.ts';

export interface Case {
  readonly name: string;
  readonly design: DesignName;
  readonly changes: Changes;
}

const on = (design: DesignName, changes: Changes = {}): Case => ({
  name: [design, ...Object.entries(changes).map(([path, text]) => `${path} ${text}`)].join(', '),
  design,
  changes,
});

/** The designs as they are, every kind of frame, without a relief, flat, nearly flat and steep. */
export const CASES: readonly Case[] = [
  on('reading-table'),
  on('meeting-table'),
  on('study-table'),
  on('reading-table', { 'bearer.reliefDepth': '0 in' }),
  on('meeting-table', { 'bearer.reliefDepth': '0 mm' }),
  on('study-table', { 'bearer.reliefDepth': '0 in' }),
  on('reading-table', { 'frame.kind': 'posts' }),
  on('reading-table', { 'frame.kind': 'panel' }),
  on('meeting-table', { 'frame.kind': 'bearer' }),
  on('meeting-table', { 'frame.kind': 'panel' }),
  on('study-table', { 'frame.kind': 'posts', 'fixing.fromEnds': '2 1/8 in' }),
  on('study-table', {
    'frame.kind': 'bearer',
    'bearer.length': '24 in',
    'post.spacing': '15 in',
    'fixing.fromEnds': '2 5/8 in',
  }),
  on('reading-table', { 'top.edgeThickness': '2 1/4 in' }),
  on('reading-table', { 'top.edgeThickness': '2 7/32 in' }),
  on('reading-table', { 'top.edgeThickness': '3/4 in', 'bearer.depth': '4 1/2 in' }),
  on('meeting-table', { 'top.edgeThickness': '49.9 mm' }),
];

export type Vec = readonly [number, number, number];

/** Where a part stands, as model.json says it. */
export interface PlaceInFile {
  readonly origin: Vec;
  readonly x: Vec;
  readonly y: Vec;
}

/** A point of an outline in model.json. */
export interface PointInFile {
  readonly x: number;
  readonly y: number;
  readonly bulge?: number;
  readonly surface?: string;
}

/** A mortise, hole or slot in model.json. */
export interface PocketInFile {
  readonly kind: 'mortise' | 'bore' | 'slottedHole';
  readonly at: Vec;
  readonly into: Vec;
  readonly along?: Vec;
  readonly length?: number;
  readonly width?: number;
  readonly diameter?: number;
  readonly depth: number | 'through';
}

/** A template as it is written, and what model.json says of one of the parts that it is for. */
export interface WrittenTemplate {
  readonly path: string;
  readonly dxf: string;
  readonly svg: string;
  readonly mark: string;
  /** Of all the parts that it says it is for. */
  readonly marks: string;
  readonly frame: PlaceInFile;
  readonly outline: readonly PointInFile[];
  readonly pockets: readonly PocketInFile[];
}

export interface WrittenCase {
  /** Parameters by path, mm and plain numbers. */
  readonly values: Readonly<Record<string, number>>;
  readonly templates: readonly WrittenTemplate[];
}

const made = new Map<string, Promise<WrittenCase>>();

/** Builds a case and reads its files; once in a test file. */
export function writtenCase(one: Case): Promise<WrittenCase> {
  const known = made.get(one.name) ?? build(one);
  made.set(one.name, known);
  return known;
}

/** All templates of all cases, each with the name of its case. */
export async function allTemplates(): Promise<readonly (WrittenTemplate & { readonly of: string })[]> {
  const built = await Promise.all(CASES.map(writtenCase));
  return built.flatMap(({ templates }, i) => templates.map((t) => ({ ...t, of: `${CASES[i]!.name}: ${t.path}` })));
}

async function build({ design, changes }: Case): Promise<WrittenCase> {
  const files = await written(design, changes, ['model', 'dxf']);
  const { values, assembly } = files.json('model.json');
  const dxfPaths = files.paths.filter((path) => path.endsWith('.dxf'));
  const templates = dxfPaths.flatMap((path) => {
    const dxf = files.text(path);
    const { marks, ids } = partsIn(dxf);
    return ids.map((id): WrittenTemplate => {
      const part = assembly.parts.find((p: { id: string }) => p.id === id);
      const { frame } = assembly.places.find((place: { part: string }) => place.part === id);
      const svg = files.text(path.replace(/dxf$/, 'svg'));
      return { path, dxf, svg, mark: part.mark, marks, frame, outline: part.body.outline, pockets: part.features };
    });
  });
  return { values, templates };
}

/** Marks and ids of the parts that a template says it is for: the second of its notes. */
function partsIn(dxf: string): { readonly marks: string; readonly ids: readonly string[] } {
  const [, marks = '', ids = ''] =
    /\r\n((?:[A-Z]+\d+ )*[A-Z]+\d+) {2}[a-z, 0-9]+ {2}(\S+(?:, \S+)*)\r\n/.exec(dxf) ?? [];
  if (ids === '') throw new Error('a template does not say which parts it is for');
  return { marks, ids: ids.split(', ') };
}
