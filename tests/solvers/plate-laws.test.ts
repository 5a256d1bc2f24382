import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanCrossStress } from '../../lib/derive/checks/solvers/plate/cross-stress.ts';
import { deflectionAt } from '../../lib/derive/checks/solvers/plate/field.ts';
import type { Plate, PlateLoad } from '../../lib/derive/checks/solvers/plate/plate.ts';
import { factorPlate, solvePlate } from '../../lib/derive/checks/solvers/plate/solve.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';
import { CHERRY, demoPlate, evenly, give, LENGTH, lazily, pushed, under, WIDTH } from './plate-demo.ts';

const SEED = 1848;
const share = fc.double({ min: 0, max: 1, noNaN: true });
const place = fc.tuple(share, share).map(([x, y]): Vec2 => [x * LENGTH, y * WIDTH]);
const coarse = lazily(() => demoPlate([12, 8]));
const near = (a: number, b: number, scale: number): void => expect(Math.abs(a - b)).toBeLessThan(1e-9 * scale);

describe('a plate', () => {
  it('gives at A under a force at B as at B under a force at A', () => {
    fc.assert(
      fc.property(place, place, (a, b) => {
        near(deflectionAt(pushed(coarse(), a), b), deflectionAt(pushed(coarse(), b), a), 10);
      }),
      { seed: SEED },
    );
  });

  it('is symmetric when it is built so', () => {
    fc.assert(
      fc.property(place, place, ([x, y], [u, v]) => {
        const here = deflectionAt(pushed(coarse(), [x, y]), [u, v]);
        near(deflectionAt(pushed(coarse(), [LENGTH - x, y]), [LENGTH - u, v]), here, 10);
        near(deflectionAt(pushed(coarse(), [x, WIDTH - y]), [u, WIDTH - v]), here, 10);
      }),
      { seed: SEED },
    );
    const mean = (x: number, y: number, at: Vec2) => meanCrossStress(pushed(coarse(), at), [x, y]);
    const first = mean(355.6, 127, [355.6, 0]);
    near(mean(1778, 127, [1778, 0]), first, 1);
    near(mean(355.6, 889, [355.6, WIDTH]), first, 1);
  });

  it('is never weaker when it is thicker', () => {
    const wave = fc.record({ a: share, b: share, c: share, d: share });
    fc.assert(
      fc.property(wave, wave, place, (base, more, at) => {
        const grow = ({ a, b, c, d }: typeof base, x: number, y: number): number =>
          a + b * Math.cos((3 * x) / LENGTH) ** 2 + c * (y / WIDTH) + d * Math.sin((9 * x * y) / LENGTH / WIDTH) ** 2;
        const thin: Plate = { ...demoPlate([12, 8]), thickness: (x, y) => 20 + 20 * grow(base, x, y) };
        const thick: Plate = { ...thin, thickness: (x, y) => thin.thickness(x, y) + 10 * grow(more, x, y) };
        const [before, after] = [give(factorPlate(thin), at), give(factorPlate(thick), at)];
        expect(before).toBeGreaterThanOrEqual(0);
        expect(after).toBeLessThanOrEqual(before * (1 + 1e-9));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('is never weaker when more of it is held', () => {
    const plate = demoPlate([12, 8]);
    const longer = plate.supports.map(({ from, to }) => ({ from: [from[0], 0] as const, to: [to[0], WIDTH] as const }));
    const [short, long] = [coarse(), factorPlate({ ...plate, supports: longer })];
    fc.assert(
      fc.property(place, (at) => {
        expect(give(long, at)).toBeLessThanOrEqual(give(short, at) + 1e-9);
      }),
      { seed: SEED },
    );
  });

  it('adds loads up, whatever their order', () => {
    const loads: PlateLoad[] = [
      { kind: 'point', at: [200, 60], force: 500 },
      { kind: 'spread', pressure: 3e-4 },
      { kind: 'own weight', density: 560 },
    ];
    const at: Vec2 = [900, 40];
    const together = deflectionAt(solvePlate(coarse(), [...loads].reverse()), at);
    near(
      together,
      loads.reduce((sum, load) => sum + under(coarse(), load, at), 0),
      1,
    );
    near(under(coarse(), { kind: 'spread', pressure: 6e-4 }, at), 2 * under(coarse(), loads[1]!, at), 1);
  });

  it('feels a patch of pressure as the points that it is made of, and all patches as the whole', () => {
    const at: Vec2 = [1000, 0];
    const patch = { from: [300, 10], to: [777, 333] } as const;
    const n = 60;
    const points = Array.from({ length: n * n }, (_, k): PlateLoad => {
      const [i, j] = [Math.floor(k / n) + 0.5, (k % n) + 0.5];
      return { kind: 'point', at: [300 + (477 * i) / n, 10 + (323 * j) / n], force: (1e-3 * 477 * 323) / n / n };
    });
    const spread = under(coarse(), { kind: 'spread', pressure: 1e-3, over: patch }, at);
    expect(deflectionAt(solvePlate(coarse(), points), at) / spread).toBeCloseTo(1, 3);
    const [left, right] = [
      { from: [0, 0], to: [777, WIDTH] } as const,
      { from: [777, 0], to: [LENGTH, WIDTH] } as const,
    ];
    const halves = [left, right].map((over): PlateLoad => ({ kind: 'spread', pressure: 1e-3, over }));
    const whole = under(coarse(), { kind: 'spread', pressure: 1e-3 }, at);
    near(deflectionAt(solvePlate(coarse(), halves), at), whole, 1);
  });

  it('does not mind in which direction its nodes are numbered', () => {
    // Alike in both directions, so that a plate and its mirror image over the diagonal move alike.
    const wood = { ...CHERRY, across: CHERRY.along, poisson: 0.3 };
    const lines = [evenly(900, 9), evenly(500, 4)] as const;
    const build = (turned: boolean): Plate => ({
      grid: turned ? { xs: lines[1], ys: lines[0] } : { xs: lines[0], ys: lines[1] },
      wood,
      thickness: (x, y) => (turned ? 20 + x / 50 + y / 80 : 20 + y / 50 + x / 80),
      supports: [
        turned ? { from: [0, 100], to: [500, 100] } : { from: [100, 0], to: [100, 500] },
        turned ? { from: [125, 800], to: [375, 800] } : { from: [800, 125], to: [800, 375] },
      ],
    });
    const [plain, turned] = [factorPlate(build(false)), factorPlate(build(true))];
    const [field, mirror] = [pushed(plain, [333, 77]), pushed(turned, [77, 333])];
    for (const [x, y] of [
      [0, 0],
      [900, 500],
      [450, 250],
      [123, 456],
    ] as const) {
      near(deflectionAt(field, [x, y]), deflectionAt(mirror, [y, x]), 10);
    }
  });

  it('takes its y from anywhere', () => {
    const plate = demoPlate([12, 8]);
    const moved: Plate = {
      ...plate,
      grid: { ...plate.grid, ys: plate.grid.ys.map((y) => y - 508) },
      thickness: (x, y) => plate.thickness(x, y + 508),
      supports: plate.supports.map(({ from, to }) => ({ from: [from[0], from[1] - 508], to: [to[0], to[1] - 508] })),
    };
    near(give(factorPlate(moved), [0, -508]), give(coarse(), [0, 0]), 10);
  });
});
