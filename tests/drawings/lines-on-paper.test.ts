import { describe, expect, test } from 'vitest';
import { chainsOf } from '../../lib/derive/drawings/chains.ts';
import { hiddenLines } from '../../lib/derive/drawings/hidden-lines.ts';
import { gaps, union } from '../../lib/derive/drawings/interval.ts';
import { joinCollinear, type Piece } from '../../lib/derive/drawings/join-collinear.ts';
import { toView, VIEWS, type View, viewFrom } from '../../lib/derive/drawings/view.ts';
import { viewEntities } from '../../lib/derive/drawings/view-entities.ts';
import type { ViewLine } from '../../lib/derive/drawings/view-line.ts';
import { hullOf } from '../../lib/geometry/hull.ts';
import { cross, type Vec2, type Vec3 } from '../../lib/geometry/vec.ts';
import { placedBlock, smallTable } from './scenes.ts';

const piece = (from: Vec3, to: Vec3, more: Partial<Piece> = {}): Piece => ({
  from,
  to,
  kind: 'visible',
  part: 'a',
  outline: false,
  ...more,
});

const line = (from: Vec2, to: Vec2): ViewLine => ({ from, to, kind: 'visible', part: 'a', outline: true });

describe('views', () => {
  test('are right-handed, with unit axes', () => {
    for (const { right, up, toward } of [...Object.values<View>(VIEWS), viewFrom([2, -7, 1])]) {
      const square = cross(right, up);
      for (const k of [0, 1, 2] as const) expect(square[k]).toBeCloseTo(toward[k], 12);
      for (const axis of [right, up, toward]) expect(Math.hypot(...axis)).toBeCloseTo(1, 12);
    }
  });

  test('stand around the front view as in third angle projection', () => {
    const p: Vec3 = [100, 20, 3];
    expect(toView(VIEWS.front, p)).toEqual([100, 3, -20]);
    expect(toView(VIEWS.plan, p)).toEqual([100, 20, 3]); // the same to the right as in front
    expect(toView(VIEWS.end, p)).toEqual([20, 3, 100]); // the same height as in front
  });

  test('cannot look along the upright', () => {
    expect(() => viewFrom([0, 0, 2])).toThrow('has no direction');
  });
});

describe('joinCollinear', () => {
  test('draws pieces that follow each other as one line, whichever way they run', () => {
    const joined = joinCollinear([piece([0, 0, 0], [10, 5, 0]), piece([30, 15, 0], [10, 5, 0])]);
    expect(joined).toHaveLength(1);
    for (const [k, n] of [0, 0, 30, 15].entries()) expect([...joined[0]!.from, ...joined[0]!.to][k]).toBeCloseTo(n, 12);
  });

  test('keeps a gap, and parallels a hundredth apart', () => {
    expect(joinCollinear([piece([0, 0, 0], [10, 0, 0]), piece([11, 0, 0], [20, 0, 0])])).toHaveLength(2);
    expect(joinCollinear([piece([0, 0, 0], [10, 0, 0]), piece([0, 0.01, 0], [10, 0.01, 0])])).toHaveLength(2);
  });

  test('drops hidden under visible and far under near; an outline below makes the line an outline', () => {
    const joined = joinCollinear([
      piece([0, 0, 9], [0, 100, 9], { kind: 'hidden', part: 'hidden' }),
      piece([0, 20, 1], [0, 60, 1], { part: 'far', outline: true }),
      piece([0, 40, 5], [0, 80, 5], { part: 'near' }),
    ]);
    expect(joined.map(({ from, to, part, kind, outline }) => [from[1], to[1], part, kind, outline])).toEqual([
      [0, 20, 'hidden', 'hidden', false],
      [20, 40, 'far', 'visible', true],
      [40, 60, 'near', 'visible', true],
      [60, 80, 'near', 'visible', false],
      [80, 100, 'hidden', 'hidden', false],
    ]);
  });

  test('finds a line whose direction lies between two bins', () => {
    const [c, s] = [Math.cos(0.123455), Math.sin(0.123455)];
    const at = (t: number, off: number): Vec3 => [c * t - s * off, s * t + c * off, 0];
    expect(joinCollinear([piece(at(0, 0), at(10, -1e-7)), piece(at(10, 0), at(19, 1e-7))])).toHaveLength(1);
  });

  test('finds lines that fall on either side of a bin, in every direction', () => {
    for (let degree = -90; degree < 90; degree += 7.5) {
      const [c, s] = [Math.cos((degree * Math.PI) / 180), Math.sin((degree * Math.PI) / 180)];
      for (const offset of [0, 0.005, -0.005, 1234.565]) {
        const at = (t: number, off: number): Vec3 => [c * t - s * (offset + off), s * t + c * (offset + off), 0];
        const joined = joinCollinear([piece(at(0, 1e-7), at(500, -1e-7)), piece(at(500, -1e-7), at(501, 1e-7))]);
        expect(joined, `${degree} degrees, ${offset} mm off`).toHaveLength(1);
      }
    }
  });
});

test('intervals: overlaps become one, small gaps close, and the rest is left over', () => {
  const covered = union([[0.5, 0.6], [0.1, 0.3], [0.2, 0.4], [0.4005, 0.45]], 0.001); // biome-ignore format: a row
  expect(covered).toEqual([[0.1, 0.45], [0.5, 0.6]]); // biome-ignore format: a row
  expect(gaps(covered, 0.06)).toEqual([[0, 0.1], [0.6, 1]]); // biome-ignore format: a row
  expect(gaps([], 0)).toEqual([[0, 1]]);
  expect(gaps([[0, 1]], 0)).toEqual([]);
});

test('a hull leaves out what lies within or straight on its sides', () => {
  const corners: Vec2[] = [
    [0, 0],
    [4, 0],
    [4, 3],
    [0, 3],
  ];
  expect(hullOf([[2, 0], [1, 1], ...corners.toReversed(), [4, 3]])).toEqual(corners);
});

describe('chainsOf', () => {
  const square = [line([0, 0], [10, 0]), line([10, 10], [10, 0]), line([10, 10], [0, 10]), line([0, 0], [0, 10])];

  test('goes round a square, or stops at its corners', () => {
    const [chain, ...none] = chainsOf(square, 'corners');
    expect(none).toEqual([]);
    expect(chain!.closed).toBe(true);
    expect(chain!.points).toHaveLength(4);
    expect(chainsOf(square, 'curves')).toHaveLength(4);
  });

  test('stops where three lines meet', () => {
    const chains = chainsOf([line([20, 0], [10, 0]), ...square], 'corners');
    expect(chains.map(({ points, closed }) => [points.length, closed])).toEqual([
      [2, false],
      [4, true],
    ]);
  });

  test('follows the facets of a curve to both ends', () => {
    const at = (k: number): Vec2 => [10 * Math.cos(k / 5), 10 * Math.sin(k / 5)];
    const curve = [2, 3, 0, 1].map((k) => line(at(k), at(k + 1)));
    const [chain, ...none] = chainsOf(curve, 'curves');
    expect(none).toEqual([]);
    expect(chain!.closed).toBe(false);
    expect(chain!.points).toHaveLength(5);
  });
});

describe('viewEntities', () => {
  test('puts seen lines on OUTLINE and hidden ones on HIDDEN, nothing lost', () => {
    const lines = hiddenLines(smallTable(), VIEWS.isometric);
    const entities = viewEntities(lines);
    const sum = (name: string): number =>
      entities
        .filter((e) => e.layer.name === name)
        .flatMap(({ points, closed }) =>
          (closed ? [...points, points[0]!] : points).slice(1).map((q, i) => [points[i]!, q] as const),
        )
        .reduce((total, [p, q]) => total + Math.hypot(q[0] - p[0], q[1] - p[1]), 0);
    const of = (kind: ViewLine['kind']): number =>
      lines
        .filter((l) => l.kind === kind)
        .reduce((total, { from, to }) => total + Math.hypot(to[0] - from[0], to[1] - from[1]), 0);
    expect(sum('OUTLINE')).toBeCloseTo(of('visible'), 2);
    expect(sum('HIDDEN')).toBeCloseTo(of('hidden'), 2);
    expect(entities.length).toBeLessThan(lines.length);
  });

  test('lifts the pen at the corners of a hidden block', () => {
    const solids = [placedBlock('block', [30, 10, 20], [10, 20, 10]), placedBlock('slab', [60, 5, 40], [0, 0, 0])];
    const names = viewEntities(hiddenLines(solids, VIEWS.front)).map((e) => e.layer.name);
    expect(names).toEqual(['HIDDEN', 'HIDDEN', 'HIDDEN', 'HIDDEN', 'OUTLINE']);
  });

  test('draws the outline of a block in front view in one go', () => {
    const entities = viewEntities(hiddenLines([placedBlock('block', [30, 10, 20], [0, 0, 0])], VIEWS.front));
    expect(entities).toHaveLength(1);
    expect(entities[0]!.closed).toBe(true);
  });
});
