import { describe, expect, test } from 'vitest';
import { defineParams } from '../../lib/params/define-params.ts';
import { text } from '../../lib/params/fields.ts';
import { formatValue } from '../../lib/params/format-value.ts';
import { moveParam } from '../../lib/params/move-param.ts';
import { valueAt } from '../../lib/params/values.ts';
import { TRESTLE_FIELDS } from '../../lib/tables/trestle/values.ts';
import { type Changes, DESIGNS, type DesignName, valuesOf, written } from '../written.ts';
import { deadOf, type Influence, influenceOf, influenceTable } from './influence.ts';

interface Subject {
  readonly name: string;
  readonly design: DesignName;
  readonly changes?: Changes;
  readonly paths?: readonly string[];
}

/** Fewer tenons in the top, so that it does not take long; no parameter cares. */
const FEW = { 'edgeJoint.spacing': '24 in' };

const TABLES: readonly Subject[] = [
  { name: 'Meeting table', design: 'meeting-table', changes: FEW },
  { name: 'Reading table', design: 'reading-table', changes: FEW },
  { name: 'Study table', design: 'study-table', changes: FEW },
  // No design has two stretchers that do not stand between posts.
  {
    name: 'Two stretchers',
    design: 'study-table',
    changes: { ...FEW, 'stretcher.count': '2' },
    paths: ['stretcher.spacing'],
  },
];
const STOOL: Subject = { name: 'reading Stool', design: 'reading-stool' };

const found: Record<string, Influence> = {};

describe('every parameter of every design moves what it should, and something', () => {
  test.each([...TABLES, STOOL])('$name', ({ name, design, changes = {}, paths }) => {
    found[name] = influenceOf(DESIGNS[design], changes, paths);
    expect(found[name].size).toBe(paths?.length ?? DESIGNS[design].params.table.size);
  });

  test('the table is the one that was looked at', async () => {
    const { [STOOL.name]: stool, ...tables } = found;
    const both = `${influenceTable(tables)}\n${influenceTable({ [STOOL.name]: stool! })}`;
    await expect(both).toMatchFileSnapshot('influence.golden.txt');
  });

  test('no parameter of the tables, and none of the stool, is dead', () => {
    expect(deadOf(TABLES.map(({ name }) => found[name]!))).toEqual([]);
    expect(deadOf([found[STOOL.name]!])).toEqual([]);
  });
});

test('a dead parameter is seen', () => {
  const { 'study-table': study } = DESIGNS;
  const params = defineParams({ ...TRESTLE_FIELDS, motto: text({ label: 'a motto', default: 'measure twice' }) });
  const influence = influenceOf({ ...study, params }, FEW, ['motto', 'supplies.coats']);
  expect([...influence]).toEqual([
    ['motto', []],
    ['supplies.coats', ['assembly', 'bill']],
  ]);
  expect(deadOf([influence, influence])).toEqual(['motto']);
});

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
    const [before, after] = [
      await written('study-table', FEW, only),
      await written('study-table', { ...FEW, [path]: to }, only),
    ];
    const changed = before.paths.filter((file) => !Buffer.from(before.bytes(file)).equals(after.bytes(file)));
    const named = new Set(changed.map((file) => file.split(/[/.]/)[0]!));
    expect([...named].sort()).toEqual(kinds);
  });
});
