import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  gridLines,
  LEAST_TO_EDGE,
  lineAt,
  SAME_LINE,
  STRESS_GRID,
} from '../../lib/derive/checks/solvers/plate/grid.ts';

const SEED = 1848;
const gaps = (lines: Float64Array): number[] => [...lines.subarray(1)].map((line, k) => line - lines[k]!);

describe('gridLines', () => {
  it('is even where nothing is asked', () => {
    expect([...gridLines({ from: -4, to: 4, through: [], count: 4 })]).toEqual([-4, -2, 0, 2, 4]);
    expect([...gridLines({ from: 0, to: 10, through: [], count: 0 })]).toEqual([0, 10]);
  });

  it('keeps every needed line, whatever is asked', () => {
    const lines = fc.array(fc.double({ min: -50, max: 1050, noNaN: true }), { maxLength: 12 });
    fc.assert(
      fc.property(lines, fc.integer({ min: 1, max: 60 }), (through, count) => {
        const grid = gridLines({ from: 0, to: 1000, through, count });
        expect(grid.length - 1).toBeGreaterThanOrEqual(count);
        expect([grid[0], grid.at(-1)]).toEqual([0, 1000]);
        expect(Math.min(...gaps(grid))).toBeGreaterThan(0);
        for (const line of through.filter((l) => l >= 0 && l <= 1000)) {
          expect(Math.min(...[...grid].map((g) => Math.abs(g - line)))).toBeLessThanOrEqual(SAME_LINE);
        }
        expect([...gridLines({ from: 0, to: 1000, through: [...through].reverse(), count })]).toEqual([...grid]);
      }),
      { seed: SEED },
    );
  });

  it('is symmetric for symmetric lines', () => {
    const half = fc.array(fc.integer({ min: 1, max: 499 }), { maxLength: 5 });
    fc.assert(
      fc.property(half, fc.integer({ min: 1, max: 60 }), (at, count) => {
        const grid = gridLines({ from: 0, to: 1000, through: [...at, ...at.map((l) => 1000 - l)], count });
        grid.forEach((line, k) => {
          expect(line + grid[grid.length - 1 - k]!).toBeCloseTo(1000, 9);
        });
      }),
      { seed: SEED },
    );
  });

  it('gives a short stretch the elements that it needs', () => {
    const to = { from: 0, to: 60, count: LEAST_TO_EDGE.value };
    const grid = gridLines({ from: 0, to: 1000, through: [60], count: STRESS_GRID.value.across, least: [to] });
    expect([...grid].filter((line) => line < 60)).toHaveLength(4);
    expect(grid).toHaveLength(33);
  });

  it('draws near lines together', () => {
    const grid = gridLines({ from: 0, to: 100, through: [0.01, 50, 50.04, 99.97, 70], count: 1 });
    expect([...grid]).toEqual([0, 50, 70, 100]);
    expect(lineAt(grid, 50.04)).toBe(1);
    expect(lineAt(grid, 99.97)).toBe(3);
    expect(() => lineAt(grid, 60)).toThrow('there is no grid line at 60 mm');
  });

  it('refuses a grid without width', () => {
    expect(() => gridLines({ from: 5, to: 5, through: [], count: 3 })).toThrow('a grid from 5 mm to 5 mm has no width');
  });
});
