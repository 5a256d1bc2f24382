import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygonSection, type Section, wedgeSection } from '../../lib/derive/checks/solvers/section.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';

const SEED = 1848;
const size = fc.double({ min: 1, max: 2000, noNaN: true });

function expectSame(a: Section, b: Section, rel: number): void {
  for (const key of Object.keys(a) as (keyof Section)[]) expect(Math.abs(a[key] / b[key] - 1)).toBeLessThan(rel);
}

/** Corners of the wedge, counted from anywhere. */
const corners = (width: number, edge: number, ridge: number, [x, y]: Vec2): Vec2[] => [
  [x, y],
  [x + width, y],
  [x + width, y + edge],
  [x + width / 2, y + ridge],
  [x, y + edge],
];

describe('polygonSection', () => {
  it('agrees with the closed form of the wedge to 1e-12', () => {
    expectSame(polygonSection(corners(900, 20, 45, [0, 0])), wedgeSection(900, 20, 45), 1e-12);
    const shapes = fc.tuple(
      size,
      fc.double({ min: 1, max: 100, noNaN: true }),
      fc.double({ min: 1, max: 3, noNaN: true }),
    );
    fc.assert(
      fc.property(shapes, ([width, edge, times]) => {
        const section = polygonSection(corners(width, edge, edge * times, [0, 0]));
        expectSame(section, wedgeSection(width, edge, edge * times), 1e-12);
      }),
      { seed: SEED },
    );
  });

  it('does not mind the way round, the first corner or a far origin', () => {
    const here = polygonSection(corners(900, 20, 45, [0, 0]));
    const round = corners(900, 20, 45, [0, 0]).reverse();
    expectSame(polygonSection(round), here, 1e-12);
    expectSame(polygonSection([...round.slice(2), ...round.slice(0, 2)]), here, 1e-12);
    const far = polygonSection(corners(900, 20, 45, [1e6, -1e6]));
    expect(far.center + 1e6).toBeCloseTo(here.center, 8);
    expect(far.inertia / here.inertia - 1).toBeCloseTo(0, 8);
  });

  it('adds up: a section cut in two about the common center is the whole', () => {
    const whole = polygonSection(corners(900, 20, 45, [0, 0]));
    const steiner = (s: Section): number => s.inertia + s.area * (s.center - whole.center) ** 2;
    const upper = polygonSection([
      [0, 0],
      [900, 0],
      [900, 20],
      [0, 20],
    ]);
    const lower = polygonSection([
      [0, 20],
      [900, 20],
      [450, 45],
    ]);
    expect(upper.area + lower.area).toBeCloseTo(whole.area, 8);
    expect((steiner(upper) + steiner(lower)) / whole.inertia).toBeCloseTo(1, 12);
  });

  it('refuses corners without an area', () => {
    expect(() => polygonSection([])).toThrow(RangeError);
    expect(() =>
      polygonSection([
        [0, 0],
        [10, 0],
        [20, 0],
      ]),
    ).toThrow('area of the section is 0 mm²');
    expect(() => wedgeSection(900, 0, 0)).toThrow('edge and ridge is 0 mm');
  });
});
