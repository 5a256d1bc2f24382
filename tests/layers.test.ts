import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { FORBIDDEN, HOMES, LAYERS } from './layer-table.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const LIB = join(ROOT, 'lib');
const IMPORT = /(?:from |import |import\()'([^']+)'/g;

interface Source {
  /** Path below lib. */
  readonly path: string;
  readonly text: string;
}

const sources: Source[] = readdirSync(LIB, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .map((path) => ({ path, text: readFileSync(join(LIB, path), 'utf8') }));

/** "derive/solids" for derive/solids/clip.ts, "units" for units/mm.ts, "" for index.ts. */
function folderOf(path: string): string {
  const parts = dirname(path).split('/');
  if (parts[0] === '.') return '';
  return parts[0] === 'derive' ? parts.slice(0, 2).join('/') : parts[0]!;
}

/** `three/addons/…` is at home where `three` is; a home that ends in "/" is a whole folder. */
const isAtHome = (target: string, path: string): boolean =>
  Object.entries(HOMES).some(
    ([name, homes]) =>
      (target === name || target.startsWith(`${name}/`)) &&
      homes.some((home) => (home.endsWith('/') ? path.startsWith(home) : path === home)),
  );

function faults({ path, text }: Source): string[] {
  const from = folderOf(path);
  if (from === '') return [];
  return [...text.matchAll(IMPORT)].flatMap(([, target = '']): string[] => {
    if (!target.startsWith('.')) {
      return isAtHome(target, path) ? [] : [`${path} imports the package ${target}`];
    }
    const to = folderOf(relative(LIB, normalize(join(LIB, dirname(path), target))));
    return to === from || LAYERS[from]?.includes(to) ? [] : [`${path} (${from}) imports ${target} (${to})`];
  });
}

/** The page lives in a browser and may use it. */
const touches = ({ path, text }: Source): string[] =>
  FORBIDDEN.filter((pattern) => !path.startsWith('page/') && pattern.test(text)).map(
    (pattern) => `${path} touches ${pattern.source}`,
  );

describe('the floors of lib', () => {
  it('has no import against the table, and packages only in their homes', () => {
    expect(sources.flatMap(faults)).toEqual([]);
  });

  it('sees a wrong edge and a stray package', () => {
    expect(faults({ path: 'units/mm.ts', text: "import { x } from '../model/part.ts';" })).toHaveLength(1);
    expect(faults({ path: 'derive/solids/a.ts', text: "import { x } from '../cut-list/bill.ts';" })).toHaveLength(1);
    expect(faults({ path: 'parts/top.ts', text: "import m from 'makerjs';" })).toHaveLength(1);
    expect(faults({ path: 'parts/top.ts', text: "import type { Mm } from '../units/mm.ts';" })).toEqual([]);
  });

  it('knows every folder', () => {
    const folders = new Set(sources.map((s) => folderOf(s.path)).filter((f) => f !== ''));
    expect([...folders].sort()).toEqual(Object.keys(LAYERS).sort());
  });

  it('touches no file, clock, chance, console or locale', () => {
    expect(sources.flatMap(touches)).toEqual([]);
    expect(touches({ path: 'x.ts', text: 'const t = Date.now(); console.log(t)' })).toHaveLength(2);
  });

  it('is the table that DEVELOPERS.md shows', () => {
    const shown = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
    const rows = Object.entries(LAYERS).map(
      ([folder, may]) => `| \`${folder}/\` | ${may.map((f) => `\`${f}\``).join(', ') || '-'} |`,
    );
    for (const row of rows) expect(shown).toContain(row);
  });
});

describe('the house rules', () => {
  it('keeps every source file within 300 lines, half of them within 120', () => {
    const lines = sources.map((s) => s.text.split('\n').length).sort((a, b) => a - b);
    expect(lines[lines.length - 1]).toBeLessThanOrEqual(300);
    expect(lines[lines.length >> 1]).toBeLessThan(120);
  });
});
