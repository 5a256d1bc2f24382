import { put } from './temp-folder.ts';

const HEAD = `import { defineDesign, trestleParams, trestleTable } from 'tablewright';
const base = { title: 'Bench', revision: 'A', date: '2026-01-02', units: 'in', params: trestleParams, values: {} };
`;

/** Design files that cannot be used, by the name of their folder. */
const FILES = {
  syntax: 'export default {\n  title: ,\n};\n',
  throws: `import { parseLength } from 'tablewright';\nconst width = parseLength('12');\nexport default { width };\n`,
  text: `throw 'no walnut left';\n`,
  stray: `import { nothing } from './not-there.ts';\nexport default nothing;\n`,
  empty: 'export const design = 3;\n',
  half: `export default { title: '', units: 'ft', compose: 3 };\n`,
  waits: 'await new Promise(() => {});\nexport default 3;\n',
  leaves: 'process.exit(0);\n',
  compose: `${HEAD}export default { ...base,\n  compose() {\n    throw new RangeError('no bench is 2133.6 mm long');\n  },\n};\n`,
  values: `${HEAD}export default { ...base, values: { top: { length: 84, wood: 'chery' } }, compose: trestleTable };\n`,
  site: `${HEAD}export default { ...base, compose: trestleTable, site: { room: { length: '3' } }, loads: { lean: -3 } };\n`,
  shop: `import { defineShop } from 'tablewright';
export default defineShop({ clamps: { short: { count: -2 } }, machines: { planer: 3 } });\n`,
  // The library puts together what is no trestle table: nothing but its own code is on the way to the error.
  ours: `${HEAD}import { defineParams } from 'tablewright';
export default { ...base, params: defineParams({}), compose: trestleTable };\n`,
  // Nothing is wrong with this one.
  good: `${HEAD}export default { ...base, compose: trestleTable };\n`,
} as const;

export type BadDesign = keyof typeof FILES;

/** Writes them all below a folder. */
export function putBadDesigns(folder: string): void {
  for (const [name, text] of Object.entries(FILES)) put(folder, `${name}/design.ts`, text);
}
