import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import design from '../../designs/reading-table/design.ts';
import shop from '../../designs/shop.ts';
import { buildFiles } from '../../lib/build/build.ts';
import { readRecords } from '../../lib/build/read-records.ts';
import { readValues } from '../../lib/params/read-values.ts';

const OUT = fileURLToPath(new URL('../../out/reading-table/', import.meta.url));
const BOARDS = fileURLToPath(new URL('../../designs/reading-table/boards.csv', import.meta.url));
const isReadable = (path: string): boolean => /\.(csv|json|dxf|svg)$/.test(path);

describe('the papers of the reading-room table that are kept in the repository', () => {
  it('are those of a fresh build; after a change run `npm run build -- reading-table` and read the difference', async () => {
    const values = readValues(design.params, design.values).values!;
    const boards = { text: readFileSync(BOARDS, 'utf8'), from: 'boards.csv' };
    const { files } = await buildFiles(design, values, {
      shop,
      records: readRecords(design, values, { boards }).records!,
    });
    const fresh = [...files.keys()].filter(isReadable).sort();
    const kept = readdirSync(OUT, { recursive: true, encoding: 'utf8' }).filter(isReadable).sort();
    expect(kept).toEqual(fresh);
    const stale = fresh.filter((path) => !readFileSync(`${OUT}${path}`).equals(files.get(path)!));
    expect(stale).toEqual([]);
  });
});
