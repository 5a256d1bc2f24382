import { expect, test } from 'vitest';
import { describeParams } from '../../lib/params/describe-params.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { spec } from './sample-spec.ts';

test('one row a parameter, in the words of the spec', () => {
  const rows = describeParams(spec);
  const cells = rows.map((r) => [r.path, r.kind, r.default, r.min, r.max, r.unit, r.entries, r.options.join('/')]);
  expect(cells).toEqual([
    ['top.length', 'length', '84 in', '24 in', '12 ft', 'in or mm', '', ''],
    ['top.thickness', 'length', '2 1/4 in', '3/4 in', '4 in', 'in or mm', '', ''],
    ['top.edgeThickness', 'length', '1 1/8 in', '6 mm', '4 in', 'in or mm', '', ''],
    ['top.strips', 'division', '8', '1', '40', '', 'or widths, each 1 in to 12 in', ''],
    ['top.layers', 'count', '1', '1', '3', '', '', ''],
    ['top.wood', 'choice', 'cherry', '', '', '', '', 'cherry/walnut/white oak'],
    ['base.tenons', 'flag', 'yes', '', '', '', '', 'yes/no'],
    ['base.rail.offsets', 'lengths', '10 in, 20 in', '1 in', '60 in', 'in or mm', '0 to 4 of them', ''],
    ['moisture', 'quantity', '7.5 %', '4 %', '20 %', '%', '', ''],
    ['note', 'text', '', '', '80 characters', '', '', ''],
  ]);
  expect(rows[0]).toMatchObject({ groups: ['Top'], label: 'length', help: 'along the grain', value: undefined });
  expect(rows[2]).toMatchObject({ because: 'under 6 mm an edge chips in use' });
  expect(rows[7]).toMatchObject({ groups: ['Base', 'Rail'] });
});

test('values print in the asked system', () => {
  const { values } = readValues(spec, { top: { length: 1800, thickness: '2 in', strips: [127, 100] } });
  const printed = (system?: 'in' | 'mm') => describeParams(spec, values, system).map((row) => row.value);
  expect(printed().slice(0, 4)).toEqual(['1800 mm', '2 in', '1 1/8 in', '5 in, 100 mm']);
  expect(printed('mm').slice(0, 4)).toEqual(['1800 mm', '50.8 mm', '28.575 mm', '127 mm, 100 mm']);
  expect(printed().slice(4)).toEqual(['1', 'cherry', 'yes', '10 in, 20 in', '7.5 %', '']);
});
