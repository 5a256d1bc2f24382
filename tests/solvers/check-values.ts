import { expect, test } from 'vitest';
import type { Basis } from '../../lib/derive/checks/solvers/ours.ts';

/** How near a figure must come: to a part of itself, by an amount, or from below with some slack. */
export type Tolerance = { readonly rel: number } | { readonly abs: number } | { readonly below: number };

/** Figures of one source: name, expected value, and how it is got. */
export interface CheckValues {
  readonly source: string;
  readonly status: Basis;
  readonly unit: string;
  readonly tolerance: Tolerance;
  readonly rows: readonly (readonly [name: string, expected: number, got: () => number])[];
}

/** One test for each figure. */
export function testValues(groups: readonly CheckValues[]): void {
  for (const { source, status, unit, tolerance, rows } of groups) {
    test.each(rows)(`%s is %f ${unit} (${status}: ${source})`, (_name, expected, got) => {
      if ('below' in tolerance) expect(got()).toBeLessThanOrEqual(expected + tolerance.below);
      else expect(Math.abs(got() - expected)).toBeLessThanOrEqual(allowed(tolerance, expected));
    });
  }
}

const allowed = (t: { readonly rel: number } | { readonly abs: number }, expected: number): number =>
  'rel' in t ? t.rel * Math.abs(expected) : t.abs;
