import { unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import table from '../../designs/reading-table/design.ts';
import { type Build, buildFiles, jobFiles } from '../../lib/build/build.ts';
import { makeJob } from '../../lib/build/job.ts';
import { parseAssignment } from '../../lib/params/assignment.ts';
import { readValues } from '../../lib/params/read-values.ts';

const SPITE = 'made in spite of "change it"';

const valuesWith = (...sets: readonly string[]) =>
  readValues(
    table.params,
    table.values,
    sets.map((one) => parseAssignment(one).override!),
  ).values!;

const text = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');

/** What pages say does not hang on their scripts. */
const assets = { pages: { client: '', bench: '' } };

let forced: Build;
let plain: Build;

beforeAll(async () => {
  forced = await buildFiles(table, valuesWith('top.edgeThickness=12 mm'), { assets });
  plain = await buildFiles(table, valuesWith(), { assets });
});

/** The model in a 3MF file, which is an archive. */
const modelIn = (file: string): string =>
  text(unzipSync(Uint8Array.from(file, (char) => char.charCodeAt(0)))['3D/3dmodel.model']!);

/** How each kind of file says that it was made in spite of "change it". */
const SAYS: readonly (readonly [RegExp, (file: string) => boolean])[] = [
  [/\.json$/, (file) => (JSON.parse(file).forced?.length ?? 0) > 0],
  [
    /\.csv$/,
    (file) =>
      file
        .trimEnd()
        .split('\r\n')
        .slice(1)
        .every((row) => row.includes('made in spite of ""change it""')),
  ],
  [/\.html$/, (file) => file.includes('Made in spite of &quot;change it&quot;: slot cover')],
  [/\.svg$/, (file) => file.includes('made in spite of &quot;change it&quot;: slot cover')],
  [/\.dxf$/, (file) => file.includes(`${SPITE}: slot cover`)],
  [/\.stl$/, (file) => file.slice(0, 80).startsWith('"change it": ')],
  [/\.png$/, (file) => file.includes(`Warning\0${SPITE}: slot cover`)],
  [/\.glb$/, (file) => file.includes('made in spite of \\"change it\\": slot cover')],
  [/\.3mf$/, (file) => modelIn(file).includes('made in spite of &quot;change it&quot;: slot cover')],
];

const says = (path: string, bytes: Uint8Array): boolean | undefined =>
  SAYS.find(([ending]) => ending.test(path))?.[1](text(bytes));

describe('a build in spite of "change it"', () => {
  it('says so on every paper', () => {
    const told = [...forced.files].map(([path, bytes]) => [path, says(path, bytes)]);
    expect(told.filter(([, said]) => said !== true)).toEqual([]);
    expect(new Set([...forced.files.keys()].map((path) => path.split('.').at(-1))).size).toBeGreaterThanOrEqual(6);
  });

  it('and no other build does', () => {
    expect([...plain.files].filter(([path, bytes]) => says(path, bytes))).toEqual([]);
    expect(plain.job.forced).toEqual([]);
    expect(Object.keys(JSON.parse(text(plain.files.get('model.json')!)))).not.toContain('forced');
  });

  it('tells in sentences what it was', () => {
    const list: readonly string[] = JSON.parse(text(forced.files.get('cut-list.json')!)).forced;
    expect(list).toEqual(forced.job.forced);
    expect(list[0]).toMatch(/^slot cover: strip T1: /);
    expect(list.some((one) => one.includes('more on this part'))).toBe(true);
  });

  it('has as many cells a row as there are heads', () => {
    for (const path of ['cut-list.csv', 'bill-of-materials.csv']) {
      const rows = text(forced.files.get(path)!)
        .trimEnd()
        .split('\r\n')
        .map((row) => [...row.matchAll(/(?:^|,)(?:"(?:[^"]|"")*"|[^,"]*)/g)].length);
      expect(new Set(rows).size).toBe(1);
    }
  });

  it('is the same from a job that is made already', async () => {
    const job = makeJob(table, valuesWith('top.edgeThickness=12 mm'));
    const files = await jobFiles(job, { only: ['lists'] });
    expect([...files.keys()]).toHaveLength(4);
    for (const [path, bytes] of files) expect(text(bytes)).toBe(text(forced.files.get(path)!));
    await expect(jobFiles(job, { only: ['lits'] })).rejects.toThrow('there is no output "lits"');
  });
});
