import { describe, expect, test } from 'vitest';
import { formatValue } from '../../lib/params/format-value.ts';
import { moveParam } from '../../lib/params/move-param.ts';
import { valueAt } from '../../lib/params/values.ts';
import { DESIGNS, valuesOf, written } from '../written.ts';
import { FEW } from './designs.ts';

// The files themselves, as a build would write them.
describe.each([
  ['supplies.coats', ['bill-of-materials']],
  ['frameJoint.endPlay', ['solids', 'templates']],
] as const)('%s', (path, kinds) => {
  test(`changes the files of ${kinds.join(' and ')}, and no others`, async () => {
    const { params } = DESIGNS['study-table'];
    const moved = moveParam(params, valuesOf(DESIGNS['study-table'], FEW) as never, path)!;
    const to = formatValue(params.table.get(path)!, valueAt(moved, path) as never, 'mm');
    const only = ['lists', 'stl', 'dxf'];
    const before = await written('study-table', FEW, only);
    const after = await written('study-table', { ...FEW, [path]: to }, only);
    const changed = before.paths.filter((file) => !Buffer.from(before.bytes(file)).equals(after.bytes(file)));
    expect([...new Set(changed.map((file) => file.split(/[/.]/)[0]!))].sort()).toEqual(kinds);
  });
});
