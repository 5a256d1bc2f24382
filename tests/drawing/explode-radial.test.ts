import { expect, test } from 'vitest';
import type { Poly, Solid } from '../../lib/drawing/entity.ts';
import { explode } from '../../lib/drawing/explode.ts';
import { DEFAULT_STYLE, type Style } from '../../lib/drawing/style.ts';
import { diameter, radius } from './samples.ts';

const MM: Style = { ...DEFAULT_STYLE, lengths: { system: 'mm', decimals: 1 } };

test('a radius with room: text inside, arrowhead against the curve from inside', () => {
  const made = explode(radius([0, 0], [18, 0]), MM);
  expect(made).toMatchObject({
    value: 18,
    text: 'R18',
    def: { type: 'radius', far: [0, 0], near: [18, 0], leader: 0 },
  });
  const head = made.entities.find((mark): mark is Solid => mark.kind === 'solid')!;
  expect(head.corners[0]).toEqual([18, 0]);
  expect(head.corners[1][0]).toBeCloseTo(15.5, 9);
  expect(made.textAt[0]).toBeLessThan(15.5);
  expect(made.textAt[1]).toBeGreaterThan(0);
});

test('a small radius: text and arrowhead outside', () => {
  const made = explode(radius([0, 0], [0, -3]), MM);
  const head = made.entities.find((mark): mark is Solid => mark.kind === 'solid')!;
  expect(head.corners[1][1]).toBeCloseTo(-5.5, 9);
  expect(made.textAt[1]).toBeLessThan(-5.5);
  expect(made.def.type === 'radius' && made.def.leader).toBeGreaterThan(0);
});

test('a line for a large radius does not run all the way from a center that may be off the sheet', () => {
  const made = explode(radius([0, 0], [1000, 0]), MM);
  const line = made.entities.find((mark): mark is Poly => mark.kind === 'poly')!;
  expect(line.points[0]![0]).toBeGreaterThan(900);
});

test('a diameter measures across and its ends are opposite points', () => {
  const made = explode(diameter([10, 10], [10, 40]), MM);
  expect(made).toMatchObject({
    value: 60,
    text: '\u00d860',
    def: { type: 'diameter', far: [10, -20], near: [10, 40] },
  });
  const heads = made.entities.filter((mark): mark is Solid => mark.kind === 'solid');
  expect(heads.map((head) => head.corners[0])).toEqual([
    [10, -20],
    [10, 40],
  ]);
  expect(heads[0]!.corners[1][1]).toBeCloseTo(-17.5, 9);
  expect(heads[1]!.corners[1][1]).toBeCloseTo(37.5, 9);
});

test('a small bore: arrowheads outside pointing in, and the maker may force either', () => {
  const outer = explode(diameter([0, 0], [4, 0]), MM).entities.filter((mark): mark is Solid => mark.kind === 'solid');
  expect(outer.map((head) => head.corners[1][0])).toEqual([-6.5, 6.5]);
  const inner = explode({ ...diameter([0, 0], [4, 0]), placement: 'inside' }, MM);
  expect(inner.textAt[0]).toBeLessThan(4);
});

test('a radius of nothing is an error', () => {
  expect(() => explode(radius([5, 5], [5, 5]), MM)).toThrow('both lie at 5, 5');
});
