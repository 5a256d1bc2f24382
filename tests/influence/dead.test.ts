import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { defineParams } from '../../lib/params/define-params.ts';
import { text } from '../../lib/params/fields.ts';
import { TRESTLE_FIELDS } from '../../lib/tables/trestle/values.ts';
import { DESIGNS } from '../written.ts';
import { FEW } from './designs.ts';
import { deadOf, influenceOf, influenceTable } from './influence.ts';

// The tables are compared with what is made of the designs by the tests beside this one.
const golden = (name: string): string => readFileSync(new URL(`${name}.golden.txt`, import.meta.url), 'utf8');
const TABLES = ['meeting-table', 'reading-table', 'study-table', 'two-stretchers'].map(golden);

test('no parameter is dead', () => {
  expect(deadOf(TABLES)).toEqual([]);
  expect(deadOf([golden('reading-stool')])).toEqual([]);
});

test('every parameter is in the tables', () => {
  for (const [name, table] of [
    ['meeting-table', TABLES[0]!],
    ['reading-table', TABLES[1]!],
    ['study-table', TABLES[2]!],
    ['reading-stool', golden('reading-stool')],
  ] as const) {
    const rows = table.trimEnd().split('\n').slice(1);
    expect(rows.map((row) => row.split(' ')[0])).toEqual([...DESIGNS[name].params.table.keys()]);
  }
});

test('a dead parameter is seen', () => {
  const { 'study-table': study } = DESIGNS;
  const params = defineParams({ ...TRESTLE_FIELDS, motto: text({ label: 'a motto', default: 'measure twice' }) });
  const influence = influenceOf({ ...study, params }, FEW, ['motto', 'supplies.coats']);
  expect([...influence]).toEqual([
    ['motto', []],
    ['supplies.coats', ['assembly', 'bill']],
  ]);
  expect(deadOf([influenceTable(influence), ...TABLES])).toEqual(['motto']);
});
