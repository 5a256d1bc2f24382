import { describe, expect, test } from 'vitest';
import { assemblyOf, VARIANTS } from './variants.ts';
import { type Verdict, verifyAll } from './verifier.ts';

/** Share by which all the wood of a piece may be off in its files. */
const WHOLE = 1e-4;

const sum = (verdicts: readonly Verdict[], size: (v: Verdict) => number): number =>
  verdicts.reduce((total, v) => total + size(v), 0);

// Source of every number: manifold-3d, which builds each part from closed form and cutters, and judges the written file.
describe.each(VARIANTS)('$name', (variant) => {
  test('every part, as built and as written, is the part that manifold-3d builds', () => {
    const verdicts = verifyAll(assemblyOf(variant));
    expect(verdicts.length).toBeGreaterThan(4);
    expect(verdicts.filter((v) => v.faults.length > 0)).toEqual([]);
    const [written, truth] = [sum(verdicts, (v) => v.written), sum(verdicts, (v) => v.truth)];
    expect(Math.abs(written / truth - 1)).toBeLessThan(WHOLE);
  });
});
