import { describe, expect, test } from 'vitest';
import { volumeOf } from '../../lib/derive/solids/solid.ts';
import { blankOf } from '../../lib/derive/solids/solid-of.ts';
import { type Assembly, partOf } from '../../lib/model/assembly.ts';
import { isGlueUp } from '../../lib/model/part.ts';
import { assemblyOf, VARIANTS } from './variants.ts';

/** Of every glued part: the share by which its members, before any slot is cut, are more or less wood than it is. */
const differences = (assembly: Assembly): number[] =>
  assembly.parts.filter(isGlueUp).map((whole) => {
    const members = whole.members.map((id) => volumeOf(blankOf(partOf(assembly, id))));
    return members.reduce((a, b) => a + b, 0) / volumeOf(blankOf(whole)) - 1;
  });

// Source: a whole is the sum of its parts.
describe.each(VARIANTS.filter((v) => v.design !== 'reading-stool'))('$name', (variant) => {
  const assembly = assemblyOf(variant);

  test('strips and layers add up to the glued top, staves to the panel leg', () => {
    const found = differences(assembly);
    expect(found).toHaveLength(variant.design === 'study-table' ? 3 : 1);
    for (const difference of found) expect(Math.abs(difference)).toBeLessThan(1e-9);
  });

  test('a member that is left out is missed', () => {
    const parts = assembly.parts.map((p) => (isGlueUp(p) ? { ...p, members: p.members.slice(1) } : p));
    const found = differences({ ...assembly, parts });
    for (const difference of found) expect(difference).toBeLessThan(-0.001);
  });
});
