/** Writes the sections of the README that come from the code: `npx tsx scripts/readme.ts`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { readmeSections, withSections } from './readme-sections.ts';

const README = new URL('../README.md', import.meta.url);

writeFileSync(README, withSections(readFileSync(README, 'utf8'), readmeSections()));
