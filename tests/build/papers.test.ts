import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import design from '../../designs/reading-table/design.ts';
import shop from '../../designs/shop.ts';
import { buildFiles } from '../../lib/build/build.ts';
import { readValues } from '../../lib/params/read-values.ts';

const OUT = fileURLToPath(new URL('../../out/reading-table/', import.meta.url));
const isReadable = (path: string): boolean => /\.(csv|json|dxf|svg)$/.test(path);

describe('the papers of the reading-room table that are kept in the repository', () => {
  it('are those of a fresh build; after a change run `npm run build -- reading-table` and read the difference', async () => {
    const { files } = await buildFiles(design, readValues(design.params, design.values).values!, { shop });
    const fresh = [...files.keys()].filter(isReadable).sort();
    const kept = readdirSync(OUT, { recursive: true, encoding: 'utf8' }).filter(isReadable).sort();
    expect(kept).toEqual(fresh);
    const stale = fresh.filter((path) => !readFileSync(`${OUT}${path}`).equals(files.get(path)!));
    expect(stale).toEqual([]);
  });
});
