import { describe, expect, it } from 'vitest';
import { factorPlate } from '../../lib/derive/checks/solvers/plate/solve.ts';
import { testValues } from './check-values.ts';
import { CHERRY, give, isotropic, lazily, under } from './plate-demo.ts';
import { navierMiddle, supportedPlate } from './plate-navier.ts';

const cherry = { a: 1200, b: 600, h: 30, wood: CHERRY };
const EVEN = { kind: 'spread', pressure: 5e-4 } as const;
const plate = lazily(() => supportedPlate(cherry, 40, 20));
const series = (pressure: number, force: number): number => navierMiddle(cherry, { pressure, force });

const square = { a: 1000, b: 1000, h: 20, wood: isotropic(10_000, 0.3) };
const STIFFNESS = (10_000 * 20 ** 3) / 12 / (1 - 0.09);
const alike = lazily(() => supportedPlate(square, 40, 40));

describe('plates on four simple supports', () => {
  testValues([
    {
      source: "Navier's series, odd m, n < 400",
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-5 },
      rows: [['ind.B.navier.uniform500', 0.1706999, () => series(5e-4, 0)]],
    },
    {
      source: "Navier's series, odd m, n < 400",
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 1e-4 },
      rows: [['ind.B.navier.point1kN', 1.343683, () => series(0, 1000)]],
    },
    {
      source: 'orthotropic plate solve 40 x 20, series value 0.1706999',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 0.003 },
      rows: [['ind.B.navierPlate.uniform500', 0.1705436, () => under(plate(), EVEN, [600, 300])]],
    },
    {
      source: 'orthotropic plate solve 40 x 20, series value 1.343683',
      status: 'computed',
      unit: 'mm',
      tolerance: { rel: 0.005 },
      rows: [['ind.B.navierPlate.point1kN', 1.346766, () => give(plate(), [600, 300])]],
    },
    {
      source: 'Timoshenko and Woinowsky-Krieger, simply supported square plate',
      status: 'memory',
      unit: 'w D/(q a⁴)',
      tolerance: { rel: 0.002 },
      rows: [
        [
          'ind.B.isoSquare.uniform',
          0.00406,
          () => (under(alike(), { kind: 'spread', pressure: 1e-3 }, [500, 500]) * STIFFNESS) / (1e-3 * 1e12),
        ],
      ],
    },
    {
      source: 'Timoshenko and Woinowsky-Krieger, simply supported square plate',
      status: 'memory',
      unit: 'w D/(P a²)',
      tolerance: { rel: 0.003 },
      rows: [['ind.B.isoSquare.point', 0.0116, () => (give(alike(), [500, 500]) * STIFFNESS) / (1000 * 1e6)]],
    },
  ]);

  it('come nearer to the series with the square of the size of the elements', () => {
    const errors = [12, 24, 48, 96].map((n) => {
      const finer = factorPlate(supportedPlate(cherry, n, n / 2));
      return [
        under(finer, EVEN, [600, 300]) / series(5e-4, 0) - 1,
        give(finer, [600, 300]) / series(0, 1000) - 1,
      ] as const;
    });
    const orders = [1, 2, 3].map((k) => [0, 1].map((load) => Math.log2(errors[k - 1]![load]! / errors[k]![load]!)));
    expect(orders.map(([even]) => even!.toFixed(1))).toMatchInlineSnapshot(`
      [
        "2.0",
        "2.0",
        "2.0",
      ]
    `);
    expect(orders.map(([, point]) => point!.toFixed(1))).toMatchInlineSnapshot(`
      [
        "1.7",
        "1.8",
        "1.8",
      ]
    `);
  });
});
