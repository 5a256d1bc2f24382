import { expect, test } from 'vitest';
import { hiddenLines } from '../../lib/derive/drawings/hidden-lines.ts';
import { viewFrom } from '../../lib/derive/drawings/view.ts';
import type { ViewLine } from '../../lib/derive/drawings/view-line.ts';
import { placedBlock } from './scenes.ts';

/** One line in words, in whole hundredths, left or lower end first. */
function inWords({ part, kind, from, to }: ViewLine): string {
  const ends = [from, to].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  return `${part} ${kind} ${ends.map((p) => p.map((n) => Math.round(n * 100) / 100 + 0).join(' ')).join(' - ')}`;
}

/**
 * A bar that stands out of the front of a block and ends inside it, seen along (0, 0.8, -0.6): right = x, up = 0.6 y + 0.8 z.
 *
 * Block, x, y and z 0-100: front from up 0 to 80, top on to 140; lower back edge at up 60. Its ends are seen edge-on and
 * leave one line each, 0 to 140.
 *
 * Bar, x 30-70, y -50-50, z 20-60: front from up -30 + 16 = -14 to -30 + 48 = 18; its top runs on and goes into the front of
 * the block at y = 0, up 48, and on inside to 30 + 48 = 78; its lower back edge lies at 30 + 16 = 46. The bar hides the lower
 * front edge of the block, up 0, between x 30 and 70. Where the two meet there is no edge of either, and no line.
 */
test('two blocks that cross, as worked out by hand', () => {
  const solids = [placedBlock('block', [100, 100, 100], [0, 0, 0]), placedBlock('bar', [40, 100, 40], [30, -50, 20])];
  const lines = hiddenLines(solids, viewFrom([0, -0.8, 0.6]));
  expect(lines.map(inWords).sort()).toEqual(
    [
      'block visible 0 0 - 0 140',
      'block visible 100 0 - 100 140',
      'block visible 0 0 - 30 0',
      'block hidden 30 0 - 70 0',
      'block visible 70 0 - 100 0',
      'block visible 0 80 - 100 80',
      'block visible 0 140 - 100 140',
      'block hidden 0 60 - 100 60',
      'bar visible 30 -14 - 30 48',
      'bar hidden 30 48 - 30 78',
      'bar visible 70 -14 - 70 48',
      'bar hidden 70 48 - 70 78',
      'bar visible 30 -14 - 70 -14',
      'bar visible 30 18 - 70 18',
      'bar hidden 30 46 - 70 46',
      'bar hidden 30 78 - 70 78',
    ].sort(),
  );
});
