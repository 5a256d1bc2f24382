import { expect, test } from 'vitest';
import { FEW, tableOf } from './designs.ts';

test('every parameter of the study table moves what it should', async () => {
  await expect(tableOf('study-table', FEW)).toMatchFileSnapshot('study-table.golden.txt');
}, 180_000);
