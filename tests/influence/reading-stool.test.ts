import { expect, test } from 'vitest';
import { tableOf } from './designs.ts';

test('every parameter of the reading stool moves what it should', async () => {
  await expect(tableOf('reading-stool')).toMatchFileSnapshot('reading-stool.golden.txt');
});
