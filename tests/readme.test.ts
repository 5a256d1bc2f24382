import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readmeSections, withSections } from '../scripts/readme-sections.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const readme = readFileSync(`${ROOT}README.md`, 'utf8');
const scripts = (JSON.parse(readFileSync(`${ROOT}package.json`, 'utf8')) as { scripts: Record<string, string> })
  .scripts;

describe('the README', () => {
  it('shows commands, parameters and outputs as they are; `npx tsx scripts/readme.ts` writes them', () => {
    expect(withSections(readme, readmeSections())).toBe(readme);
  });

  it('has no section without its marks', () => {
    expect(() => withSections('nothing', readmeSections())).toThrow('the README has no marks for the section commands');
  });

  it.each(['README.md', 'DEVELOPERS.md'])('%s links only to files that exist', (file) => {
    const text = readFileSync(`${ROOT}${file}`, 'utf8');
    const links = [...text.matchAll(/\]\(([^)#]+)\)/g)].map((m) => m[1]!).filter((l) => !/^https?:/.test(l));
    expect(links.filter((link) => !existsSync(`${ROOT}${link}`))).toEqual([]);
  });

  it('names only scripts of package.json', () => {
    const named = [...readme.matchAll(/npm run ([\w-]+)/g)].map((m) => m[1]!);
    expect(named.length).toBeGreaterThan(2);
    expect(named.filter((name) => scripts[name] === undefined)).toEqual([]);
  });
});
