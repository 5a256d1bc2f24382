import { describe, expect, test } from 'vitest';
import { add } from '../../lib/geometry/vec.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import { valueAt } from '../../lib/params/values.ts';
import { trestleParams } from '../../lib/tables/trestle/spec.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';
import type { TrestleValues } from '../../lib/tables/trestle/values.ts';
import { withMoved } from '../solids/assembled.ts';
import { DESIGNS, valuesOf } from '../written.ts';
import { faultsOrThrown } from './faults-of.ts';
import { type Sample, sampleOf } from './random-values.ts';

const SAMPLES = 1000;
const BATCH = 100;

const samples: readonly Sample[] = Array.from({ length: SAMPLES }, (_, seed) => sampleOf(seed));

// Source: what any piece of furniture must be, whatever its sizes. A failure names the sample and how to make it again.
describe('any values that the rules allow give a table that can be made', () => {
  test.each(Array.from({ length: SAMPLES / BATCH }, (_, k) => k * BATCH))('samples from %i on', (first) => {
    const batch = samples.slice(first, first + BATCH);
    const found = batch.flatMap((sample) => faultsOrThrown(sample).map((fault) => `${fault} | ${sample.name}`));
    expect(found).toEqual([]);
  });

  test('the samples differ, and every parameter is somewhere moved', () => {
    expect(new Set(samples.map((s) => JSON.stringify(s.values))).size).toBeGreaterThan(0.99 * SAMPLES);
    const still = [...trestleParams.table.keys()].filter(
      (path) => new Set(samples.map((s) => JSON.stringify(valueAt(s.values, path)))).size < 2,
    );
    expect(still).toEqual([]);
  });

  test('the same values give the same table, to the last bit', () => {
    for (let seed = 0; seed < SAMPLES; seed += 50) {
      const { values } = samples[seed]!;
      expect(JSON.stringify(trestleTable(values))).toBe(JSON.stringify(trestleTable(values)));
    }
  });
});

describe('a fault that is planted is seen', () => {
  const values = valuesOf(DESIGNS['reading-table']) as unknown as TrestleValues;
  const sample: Sample = { name: 'as designed', design: 'reading-table', values };
  const spoilt = (spoil: (assembly: Assembly) => Assembly): string[] =>
    faultsOrThrown(sample, () => spoil(trestleTable(values)));
  const lifted = (id: string, by: number): string[] =>
    spoilt((a) => withMoved(a, id, (frame) => ({ ...frame, origin: add(frame.origin, [0, 0, by]) })));

  test('none without', () => {
    expect(spoilt((a) => a)).toEqual([]);
  });

  test('a bearer 0.1 mm too high, a pad that hangs in the air', () => {
    expect(lifted('frame-a/bearer', 0.1)).toContainEqual(
      expect.stringMatching(/bearer B1 and strip T\d reach into each other/),
    );
    expect(lifted('frame-a/bearer', -0.1)).toContainEqual(expect.stringMatching(/bearer B1 .* reach into each other/));
    expect(lifted('frame-a/pad-1', 5000)).toEqual(['pad D1 touches nothing that stands on the floor']);
  });

  test('a strip that is left out of its top', () => {
    const short = spoilt((a) => ({
      ...a,
      parts: a.parts.map((p) => (p.id === 'top' ? { ...p, members: p.members!.slice(1) } : p)),
    }));
    expect(short).toContainEqual(expect.stringMatching(/^top: its members are \d/));
  });

  test('a solid that is inside out', () => {
    const turned = spoilt((a) => ({
      ...a,
      parts: a.parts.map((p) =>
        p.id === 'frame-a/pad-1' && p.body.kind === 'prism'
          ? { ...p, body: { ...p.body, outline: p.body.outline.toReversed() } }
          : p,
      ),
    }));
    expect(turned).toContainEqual(expect.stringMatching(/^frame-a\/pad-1: volume -/));
  });

  test('anything thrown', () => {
    const thrown = faultsOrThrown(sample, () => {
      throw new RangeError('no such table');
    });
    expect(thrown).toEqual(['thrown: no such table']);
  });
});
