import { expect, test } from 'vitest';
import { FEW, tableOf } from './designs.ts';

test('every parameter of the meeting table moves what it should', async () => {
  await expect(tableOf('meeting-table', FEW)).toMatchFileSnapshot('meeting-table.golden.txt');
}, 180_000);
