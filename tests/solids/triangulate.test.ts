import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { earcut } from '../../lib/derive/solids/earcut.ts';
import { areaVector, type Face } from '../../lib/derive/solids/solid.ts';
import { triangulateFace } from '../../lib/derive/solids/triangulate.ts';
import { add, cross, dot, scale, unit, type Vec2, type Vec3 } from '../../lib/geometry/vec.ts';

interface Sheet {
  readonly vertices: Vec3[];
  readonly face: Face;
}

/** A flat outline with holes, put anywhere in space; loop 0 turns counter-clockwise about the normal, holes clockwise. */
function sheet(loops: readonly (readonly Vec2[])[], normal: Vec3, origin: Vec3): Sheet {
  const u = unit(cross(Math.abs(normal[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0], normal));
  const v = cross(normal, u);
  const vertices: Vec3[] = [];
  const indices = loops.map((loop) =>
    loop.map(([x, y]) => vertices.push(add(origin, add(scale(u, x), scale(v, y)))) - 1),
  );
  return { vertices, face: { normal, loops: indices, surface: 'sheet' } };
}

/** How often each side of a walk, or of many, is gone along: "3>7". */
function sidesOf(walks: readonly (readonly number[])[]): Map<string, number> {
  const sides = new Map<string, number>();
  for (const [i, j] of walks.flatMap((walk) => walk.map((i, k) => [i, walk[(k + 1) % walk.length]!] as const))) {
    sides.set(`${i}>${j}`, (sides.get(`${i}>${j}`) ?? 0) + 1);
  }
  return sides;
}

const areaAlong = ({ vertices, face }: Sheet, walks: readonly number[][]): number[] =>
  walks.map((walk) => dot(areaVector(vertices, walk), face.normal));

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** What is wrong with the triangles of a face, in words. */
function faults(s: Sheet, flat: readonly number[]): string[] {
  const triangles = Array.from({ length: flat.length / 3 }, (_, t) => flat.slice(3 * t, 3 * t + 3));
  const found = triangles.filter((_, t) => areaAlong(s, triangles)[t]! < -1e-9).map((t) => `${t} looks inward`);
  const [sides, border] = [sidesOf(triangles), sidesOf(s.face.loops)];
  for (const edge of border.keys()) if (sides.get(edge) !== 1) found.push(`edge ${edge} is in ${sides.get(edge) ?? 0}`);
  for (const [side, n] of sides) {
    const back = sides.get(side.split('>').reverse().join('>')) ?? 0;
    if (n !== 1 || back !== (border.has(side) ? 0 : 1)) found.push(`side ${side} is in ${n} and ${back}`);
  }
  const [area, truth] = [sum(areaAlong(s, triangles)), sum(areaAlong(s, s.face.loops))];
  if (!(Math.abs(area - truth) < 1e-9 * truth)) found.push(`area ${area} instead of ${truth}`);
  return found;
}

const trianglesOf = ({ vertices, face }: Sheet): number[] => {
  const out: number[] = [];
  triangulateFace(vertices, face, out);
  return out;
};

/** A closed walk with extra points straight on some of its sides. */
const withStraights = (corners: readonly Vec2[], stops: readonly (readonly number[])[]): Vec2[] =>
  corners.flatMap((a, i): Vec2[] => {
    const b = corners[(i + 1) % corners.length]!;
    const at = [...(stops[i % stops.length] ?? [])].sort((p, q) => p - q);
    return [a, ...at.map((t): Vec2 => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t])];
  });

const star = (radii: readonly number[], turn: number, x = 0, y = 0): Vec2[] =>
  radii.map((r, k) => {
    const at = turn + (2 * Math.PI * k) / radii.length;
    return [x + r * Math.cos(at), y + r * Math.sin(at)];
  });

const fraction = fc.integer({ min: 1, max: 15 }).map((n) => n / 16);
const stops = fc.array(fc.uniqueArray(fraction, { maxLength: 3 }), { minLength: 1, maxLength: 4 });
const turn = fc.double({ min: 0, max: 6.28, noNaN: true });
const normal = fc
  .tuple(...[0, 1, 2].map(() => fc.integer({ min: -10, max: 10 })))
  .filter((n) => n.some((k) => k !== 0))
  .map((n) => unit(n as unknown as Vec3));

/** Stars with holes on a grid of cells that the star keeps clear of; straight points on both. */
const sheets = fc
  .record({
    radii: fc.array(fc.integer({ min: 50, max: 100 }), { minLength: 3, maxLength: 12 }),
    turn,
    stops,
    normal,
    holes: fc.array(
      fc.record({ radii: fc.array(fc.integer({ min: 2, max: 4 }), { minLength: 3, maxLength: 9 }), turn, stops }),
      { maxLength: 4 },
    ),
  })
  .map((o) => {
    const cells: readonly Vec2[] = [
      [-5, -5],
      [5, -5],
      [5, 5],
      [-5, 5],
    ];
    const holes = o.holes.map((hole, k) =>
      withStraights(star(hole.radii, hole.turn, ...cells[k]!), hole.stops).reverse(),
    );
    return sheet([withStraights(star(o.radii, o.turn), o.stops), ...holes], o.normal, [100, -200, 300]);
  });

// Source: Euler. Every side of a triangle is on the border once or inside twice, and the areas add up.
describe('triangles of a face', () => {
  test('anything: outlines with dents, straight points and holes, anywhere in space', () => {
    let straight = 0;
    let holes = 0;
    fc.assert(
      fc.property(sheets, (s) => {
        expect(faults(s, trianglesOf(s))).toEqual([]);
        straight += s.face.loops.flat().length;
        holes += s.face.loops.length - 1;
      }),
      { seed: 47, numRuns: 2000 },
    );
    expect(straight).toBeGreaterThan(20_000);
    expect(holes).toBeGreaterThan(2_000);
  });

  test('a hole whose bridge is in line with a side of another, where earcut alone loses a corner', () => {
    const loops: readonly (readonly Vec2[])[] = [
      [
        [50, 0],
        [-25, 43],
        [-25, -43],
      ],
      [
        [-4, -2],
        [-6, -2],
        [-7, 0],
        [-6.5, 3],
        [-3.5, 3],
        [-3, 0],
      ],
      [
        [4, -2],
        [3.5, 3],
        [7, 0],
      ],
    ];
    const flat = loops.flat(2);
    expect(earcut(flat, [3, 9])).toHaveLength(3 * (12 + 4 - 2) - 3);
    const s = sheet(loops, [0, -1, 0], [0, 0, 0]);
    expect(faults(s, trianglesOf(s))).toEqual([]);
  });

  test('a straight run of many points, and a triangle with points on all sides', () => {
    const run = withStraights(star([50, 60, 70], 0.3), [[0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9]]);
    const s = sheet([run], unit([1, 2, 3]), [0, 0, 0]);
    const triangles = trianglesOf(s);
    expect(triangles).toHaveLength(3 * (run.length - 2));
    expect(faults(s, triangles)).toEqual([]);
  });

  test('a dented quadrangle, whichever corner comes first', () => {
    const dart: readonly Vec2[] = [
      [0, 0],
      [4, 1],
      [8, 0],
      [4, 9],
    ];
    for (let k = 0; k < 4; k++) {
      const s = sheet([[...dart.slice(k), ...dart.slice(0, k)]], [0, 0, 1], [0, 0, 0]);
      expect(faults(s, trianglesOf(s))).toEqual([]);
    }
  });

  test('a triangle that is missing, turned over or double is seen', () => {
    const s = sheet([star([50, 60, 70, 60, 50], 0)], [0, 0, 1], [0, 0, 0]);
    const [a, b, c, ...rest] = trianglesOf(s);
    expect(faults(s, rest).length).toBeGreaterThan(0);
    expect(faults(s, [a!, c!, b!, ...rest]).length).toBeGreaterThan(0);
    expect(faults(s, [a!, b!, c!, a!, b!, c!, ...rest]).length).toBeGreaterThan(0);
  });
});
