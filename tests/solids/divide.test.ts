import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DividedPlan, dividePlan } from '../../lib/derive/solids/divide.ts';
import { type Plane, planeHeight, type Surface } from '../../lib/geometry/surface.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';

const area = (points: readonly Vec2[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    return sum + (x * v - u * y) / 2;
  }, 0);

const middle = (points: readonly Vec2[]): Vec2 => [
  points.reduce((sum, p) => sum + p[0], 0) / points.length,
  points.reduce((sum, p) => sum + p[1], 0) / points.length,
];

/** Lines between regions that are not there once each way, and lines of the border that no region has. */
function untidy({ regions, edges }: DividedPlan): string[] {
  const inside = regions.flatMap(({ loop }) => loop.map((from, k) => `${from}>${loop[(k + 1) % loop.length]}`));
  // The border, walked the other way round, closes every line.
  const border = edges.flatMap((edge) => edge.slice(1).map((to, k) => `${to}>${edge[k]}`));
  const lines = [...inside, ...border];
  const known = new Set(lines);
  const twice = lines.filter((line, k) => lines.indexOf(line) !== k);
  return [...twice, ...lines.filter((line) => !known.has(line.split('>').reverse().join('>')))];
}

/** What is wrong with a division, in words; the surface itself is asked at the middle of every region. */
function faults(polygon: readonly Vec2[], surface: Surface): string[] {
  const plan = dividePlan(polygon, surface);
  const found = untidy(plan).map((line) => `line ${line}`);
  let whole = 0;
  for (const { plane, loop } of plan.regions) {
    const points = loop.map((i) => plan.points[i]!);
    whole += area(points);
    const at = middle(points);
    const heights = surface.planes.map((p) => planeHeight(p, ...at));
    const best = surface.take === 'highest' ? Math.max(...heights) : Math.min(...heights);
    const own = surface.planes.filter((p) => p.name === plane).map((p) => planeHeight(p, ...at));
    if (!own.some((z) => Math.abs(z - best) < 1e-6)) found.push(`region ${plane}`);
  }
  if (!(Math.abs(whole / area(polygon) - 1) < 1e-9)) found.push(`area ${whole} instead of ${area(polygon)}`);
  return found;
}

const rectangle = (x: number, y: number): Vec2[] => [
  [0, -y / 2],
  [x, -y / 2],
  [x, y / 2],
  [0, y / 2],
];

/** Planes that fall away from the middle of a 1200 x 800 plan, each towards one side. */
const falling = (slopes: readonly (readonly [number, number])[]): Plane[] =>
  slopes.map(([a, b], i) => ({ name: `plane ${i}`, a, b, c: 50 - a * 600 }));

describe('a plan divided by creases', () => {
  test('flat, wedge and single slope', () => {
    for (const slopes of [
      [[0, 0]],
      [
        [0, 0.1],
        [0, -0.1],
      ],
      [[0.02, 0.03]],
    ] as const) {
      const surface: Surface = { take: 'lowest', planes: falling(slopes) };
      expect(faults(rectangle(1200, 800), surface)).toEqual([]);
      expect(dividePlan(rectangle(1200, 800), surface).regions).toHaveLength(slopes.length);
    }
  });

  test('creases into the corners, and four planes that meet in one point', () => {
    const pyramid = falling([
      [0.1, 0],
      [-0.1, 0],
      [0, 0.15],
      [0, -0.15],
    ]);
    for (const take of ['lowest', 'highest'] as const) {
      const plan = dividePlan(rectangle(1200, 800), { take, planes: pyramid });
      expect(faults(rectangle(1200, 800), { take, planes: pyramid })).toEqual([]);
      expect(plan.regions).toHaveLength(4);
      expect(plan.points).toHaveLength(5);
    }
  });

  test('a plane that is there twice, or touches the rest in a line only, makes no region of its own', () => {
    const twice = falling([
      [0, 0.1],
      [0, -0.1],
      [0, 0.1],
    ]);
    const touching = [
      ...falling([
        [0, 0.1],
        [0, -0.1],
      ]),
      { name: 'level', a: 0, b: 0, c: 50 },
    ];
    for (const planes of [twice, touching]) {
      expect(faults(rectangle(1200, 800), { take: 'lowest', planes })).toEqual([]);
      expect(dividePlan(rectangle(1200, 800), { take: 'lowest', planes }).regions).toHaveLength(2);
    }
  });

  // Source: areas add up, neighbors share their lines, and the surface itself says which plane makes it where.
  test('anything: up to six planes over any convex plan', () => {
    const slope = fc.integer({ min: -20, max: 20 }).map((n) => n / 100);
    const plane = fc.tuple(slope, slope, fc.integer({ min: 30, max: 60 }));
    const polygon = fc
      .tuple(
        fc.integer({ min: 3, max: 8 }),
        fc.integer({ min: 200, max: 1000 }),
        fc.double({ min: 0, max: 6, noNaN: true }),
      )
      .map(([n, radius, turn]) =>
        Array.from({ length: n }, (_, k): Vec2 => {
          const at = turn + (2 * Math.PI * k) / n;
          return [600 + radius * Math.cos(at), 0.6 * radius * Math.sin(at)];
        }),
      );
    let regions = 0;
    fc.assert(
      fc.property(
        polygon,
        fc.array(plane, { minLength: 1, maxLength: 6 }),
        fc.constantFrom('lowest' as const, 'highest' as const),
        (plan, planes, take) => {
          const surface: Surface = {
            take,
            planes: planes.map(([a, b, c], i) => ({ name: `${i}`, a, b, c: c - 600 * a })),
          };
          expect(faults(plan, surface)).toEqual([]);
          regions += dividePlan(plan, surface).regions.length;
        },
      ),
      { seed: 41, numRuns: 2000 },
    );
    expect(regions).toBeGreaterThan(4000);
  });
});
