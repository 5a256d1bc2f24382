import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editDistance, nearMiss, nearMissPath } from '../../lib/params/near-miss.ts';

const RUN = { seed: 20_254, numRuns: 1_000 };
const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 8 });

test.each([
  ['', '', 0],
  ['', 'abc', 3],
  ['abc', 'abc', 0],
  ['abc', 'acb', 1],
  ['abc', 'abd', 1],
  ['abc', 'ab', 1],
  ['ab', 'xab', 1],
  ['kitten', 'sitting', 3],
  ['ca', 'abc', 3],
])('%j to %j takes %d edits', (a, b, distance) => {
  expect(editDistance(a, b)).toBe(distance);
});

test('counts the same both ways, nothing only for equals, never more than the longer word', () => {
  fc.assert(
    fc.property(word, word, (a, b) => {
      const distance = editDistance(a, b);
      expect(editDistance(b, a)).toBe(distance);
      expect(distance === 0).toBe(a === b);
      expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
      expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
    }),
    RUN,
  );
});

test.each([
  ['chery', 'cherry'],
  ['Cherry', 'cherry'],
  ['white-oak', 'white oak'],
  ['whiteoak', 'white oak'],
  ['wlanut', 'walnut'],
  ['ahs', 'ash'],
  ['oak', undefined],
  ['', undefined],
  ['mahogany', undefined],
  ['x'.repeat(1000), undefined],
])('%j was probably %j', (typed, meant) => {
  expect(nearMiss(typed, ['cherry', 'walnut', 'white oak', 'ash', 'cherry'])).toBe(meant);
});

test.each([
  ['top.lenght', 'top.length'],
  ['top.edge_thickness', 'top.edgeThickness'],
  ['edgeThickness', 'top.edgeThickness'],
  ['base.edgeThicknes', 'top.edgeThickness'],
  ['legs.length', 'top.length'],
  ['tpo.length', 'top.length'],
  ['rail', undefined],
])('path %j was probably %j', (typed, meant) => {
  expect(nearMissPath(typed, ['top.length', 'top.edgeThickness', 'base.length'])).toBe(meant);
});
