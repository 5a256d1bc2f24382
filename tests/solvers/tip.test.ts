import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FLOOR_FRICTION, slidesFirst } from '../../lib/derive/checks/solvers/slide.ts';
import { type Standing, tipLoad, tipMargin, tipPush } from '../../lib/derive/checks/solvers/tip.ts';
import { insideOf, tipLines } from '../../lib/derive/checks/solvers/tip-hull.ts';
import type { Vec2 } from '../../lib/geometry/vec.ts';

const RUN = { seed: 7_330, numRuns: 300 };
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const spot = (size: number): fc.Arbitrary<Vec2> => fc.tuple(mm(-size, size), mm(-size, size));

/** Feet around the center of gravity, at most 90° apart, so that it lies within them. */
const pieces: fc.Arbitrary<Standing> = fc
  .record({ radii: fc.tuple(mm(100, 800), mm(100, 800), mm(100, 800), mm(100, 800)), weight: mm(50, 1500) })
  .map(({ radii, weight }) => ({
    contacts: radii.map((r, k): Vec2 => [r * Math.cos((k * Math.PI) / 2 + 0.4), r * Math.sin((k * Math.PI) / 2 + 0.4)]),
    center: [0, 0],
    weight,
  }));
const loads = fc.array(fc.record({ force: mm(0, 2000), at: spot(1200) }), { maxLength: 3 });
const pushes = fc.record({ force: mm(1, 500), height: mm(100, 900), toward: spot(1) });

const wider = (piece: Standing, f: number): Standing => ({
  ...piece,
  contacts: piece.contacts.map(([x, y]): Vec2 => [x * f, y * f]),
});

describe('tipping', () => {
  test('never comes sooner on wider feet, nor on one more foot', () => {
    fc.assert(
      fc.property(pieces, loads, pushes, mm(1, 2), spot(1000), (piece, down, push, f, foot) => {
        const { margin } = tipMargin(piece, down, push);
        expect(tipMargin(wider(piece, f), down, push).margin).toBeGreaterThanOrEqual(margin * (1 - 1e-9));
        const more = { ...piece, contacts: [...piece.contacts, foot] };
        expect(tipLoad(more, [900, 700]).force).toBeGreaterThanOrEqual(tipLoad(piece, [900, 700]).force * (1 - 1e-9));
        expect(tipPush(wider(piece, f), 750).force).toBeGreaterThanOrEqual(tipPush(piece, 750).force * (1 - 1e-9));
      }),
      RUN,
    );
  });

  test('comes just when the load is the tipping load, and the push the tipping push', () => {
    fc.assert(
      fc.property(pieces, mm(0, 2 * Math.PI), mm(100, 900), (piece, angle, height) => {
        const at: Vec2 = [1500 * Math.cos(angle), 1500 * Math.sin(angle)];
        const { force } = tipLoad(piece, at);
        expect(tipMargin(piece, [{ force, at }]).margin).toBeCloseTo(1, 9);
        const push = { force: tipPush(piece, height).force, height };
        expect(tipMargin(piece, [], push).margin).toBeCloseTo(1, 9);
      }),
      RUN,
    );
  });

  test('is the same whichever way the piece is turned and its feet are told', () => {
    fc.assert(
      fc.property(pieces, loads, mm(0, 2 * Math.PI), (piece, down, angle) => {
        const turn = ([x, y]: Vec2): Vec2 => [
          x * Math.cos(angle) - y * Math.sin(angle) + 50,
          x * Math.sin(angle) + y * Math.cos(angle) - 70,
        ];
        const turned: Standing = {
          ...piece,
          contacts: [...piece.contacts].reverse().map(turn),
          center: turn(piece.center),
        };
        const other = tipMargin(
          turned,
          down.map((d) => ({ ...d, at: turn(d.at) })),
        ).margin;
        const { margin } = tipMargin(piece, down);
        if (margin === Infinity) expect(other).toBe(Infinity);
        else expect(other / margin).toBeCloseTo(1, 6);
      }),
      RUN,
    );
  });

  test('a push in a direction tips no sooner than one in the worst', () => {
    fc.assert(
      fc.property(pieces, pushes, (piece, { toward, ...push }) => {
        expect(tipMargin(piece, [], { ...push, toward }).margin).toBeGreaterThanOrEqual(
          tipMargin(piece, [], push).margin * (1 - 1e-9),
        );
      }),
      RUN,
    );
  });
});

describe('how a piece stands', () => {
  const square: Vec2[] = [
    [0, 0],
    [400, 0],
    [400, 400],
    [0, 400],
  ];
  const stool: Standing = { contacts: square, center: [200, 200], weight: 80 };

  test('loads between the feet never tip it', () => {
    expect(tipMargin(stool, [{ force: 1e6, at: [10, 390] }]).margin).toBe(Infinity);
    expect(tipLoad(stool, [200, 0]).force).toBe(Infinity);
  });

  test('a center of gravity outside its feet falls by itself', () => {
    expect(tipMargin({ ...stool, center: [500, 200] }, []).margin).toBe(0);
    expect(tipPush({ ...stool, center: [500, 200] }, 400).force).toBe(0);
    const sitter = [{ force: 40, at: [100, 200] as const }];
    expect(tipMargin({ ...stool, center: [500, 200] }, sitter).margin).toBeCloseTo((40 * 300) / (80 * 100), 9);
  });

  test('feet in one line hold nothing sideways', () => {
    const line: Standing = {
      ...stool,
      contacts: [
        [0, 0],
        [200, 0],
        [400, 0],
      ],
      center: [200, 0],
    };
    expect(tipLines(line.contacts)).toHaveLength(2);
    expect(tipPush(line, 700).force).toBe(0);
    expect(tipMargin(line, [{ force: 1, at: [200, 1] }]).margin).toBe(0);
  });

  test('one spot is nothing to stand on', () => {
    expect(() =>
      tipLines([
        [1, 1],
        [1, 1],
      ]),
    ).toThrow('2 contacts in one spot are nothing to stand on');
  });

  test('names the line it goes over', () => {
    const { line } = tipLoad(stool, [500, 200]);
    expect([line.from, line.to]).toEqual([
      [400, 0],
      [400, 400],
    ]);
    expect(line.outward).toEqual([1, 0]);
    expect(insideOf(line, [100, 7])).toBe(300);
  });

  test('feet inside the others change nothing', () => {
    expect(tipLines([...square, [200, 200], [400, 200]])).toHaveLength(4);
  });
});

test('a table pushed at the top slides before it tips only where it stands wide for its height', () => {
  expect(slidesFirst(355.6, 749.3, FLOOR_FRICTION.value.usual)).toBe(true);
  expect(slidesFirst(355.6, 749.3, FLOOR_FRICTION.value.high)).toBe(false);
});
