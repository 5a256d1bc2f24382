import { expect, test } from 'vitest';
import { FEW, tableOf } from './designs.ts';

test('every parameter of the reading table moves what it should', async () => {
  await expect(tableOf('reading-table', FEW)).toMatchFileSnapshot('reading-table.golden.txt');
}, 180_000);
