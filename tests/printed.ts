import { expect } from 'vitest';

export const INCH = 25.4;

/** Rounding of files with six decimals. */
const ROUNDING = 1e-5;

/** Expects a value that prints as the given decimals: off by half of the last place and the slack, at most. */
export function expectPrinted(value: number, printed: string, what: string, slack = ROUNDING): void {
  const decimals = printed.split('.')[1]?.length ?? 0;
  const off = Math.abs(value - Number(printed));
  expect(off, `${what}: ${value} instead of ${printed}`).toBeLessThanOrEqual(0.5 * 10 ** -decimals + slack);
}
