import { expect, test } from 'vitest';
import { FEW, tableOf } from './designs.ts';

// No design has two stretchers that do not stand between posts.
test('the parameters of two stretchers between panel legs move what they should', async () => {
  const table = tableOf('study-table', { ...FEW, 'stretcher.count': '2' }, [
    'stretcher.spacing',
    'stretcher.thickness',
  ]);
  await expect(table).toMatchFileSnapshot('two-stretchers.golden.txt');
});
