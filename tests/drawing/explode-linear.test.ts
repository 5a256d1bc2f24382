import { describe, expect, test } from 'vitest';
import type { Poly, Solid, Text } from '../../lib/drawing/entity.ts';
import { explode } from '../../lib/drawing/explode.ts';
import type { Exploded } from '../../lib/drawing/exploded.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { aligned, linear } from './samples.ts';

const lines = (made: Exploded): readonly Poly[] => made.entities.filter((mark): mark is Poly => mark.kind === 'poly');
const heads = (made: Exploded): readonly Solid[] =>
  made.entities.filter((mark): mark is Solid => mark.kind === 'solid');
const letters = (made: Exploded): Text => made.entities.find((mark): mark is Text => mark.kind === 'text')!;

describe('a horizontal dimension of 90 mm, 20 mm under its points', () => {
  const made = explode(linear([10, 5], [100, 8], 0, [0, -15]), DEFAULT_STYLE);

  test('measures along its direction', () => {
    expect(made.value).toBe(90);
    expect(made.text).toBe('3 35/64"'); // 90 mm is 226.8 sixty-fourths
    expect(made.def).toEqual({ type: 'linear', line: [100, -15], from: [10, 5], to: [100, 8], angle: 0 });
  });

  test('has extension lines with a gap of 1.5 and an overshoot of 2, and a dimension line between them', () => {
    expect(lines(made).map((line) => line.points)).toEqual([
      [
        [10, 3.5],
        [10, -17],
      ],
      [
        [100, 6.5],
        [100, -17],
      ],
      [
        [10, -15],
        [100, -15],
      ],
    ]);
  });

  test('has filled arrowheads, three times as long as wide, with their tips on the extension lines', () => {
    expect(heads(made).map((head) => head.corners[0])).toEqual([
      [10, -15],
      [100, -15],
    ]);
    for (const { corners } of heads(made)) {
      const [tip, a, b] = corners;
      expect(Math.abs(a[1] - b[1]) * 3).toBeCloseTo(2.5, 9);
      expect(Math.abs((a[0] + b[0]) / 2 - tip[0])).toBeCloseTo(2.5, 9);
      expect(a[0]).toBeGreaterThan(10);
      expect(a[0]).toBeLessThan(100);
    }
  });

  test('has its text centered over the line', () => {
    expect(made.textAt[0]).toBe(55);
    expect(made.textAt[1]).toBeCloseTo(-15 + 0.8 + 1.25, 9);
    expect(letters(made)).toMatchObject({
      text: '3 35/64"',
      rotation: 0,
      align: 'center',
      valign: 'middle',
      height: 2.5,
    });
  });
});

test('a vertical dimension reads from the right: its text runs upwards, left of the line', () => {
  const made = explode(linear([0, 0], [0, 60], 90, [20, 0]), DEFAULT_STYLE);
  expect(letters(made).rotation).toBe(90);
  expect(made.textAt[0]).toBeLessThan(20);
  expect(made.textAt[1]).toBe(30);
});

test.each([
  ['90.035, the length of a side that falls 2.5 mm over 90', [0, 0], [90, 2.5], Math.hypot(90, 2.5)],
  ['5, of a 3-4-5 triangle', [1, 1], [4, 5], 5],
] as const)('an aligned dimension measures %s', (_, from, to, value) => {
  const made = explode(aligned(from, to, [0, 30]), DEFAULT_STYLE);
  expect(made.value).toBeCloseTo(value, 12);
  expect(made.def.type === 'aligned' && made.def.angle).toBeCloseTo(
    (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI,
    9,
  );
});

test('a rotated dimension measures the shadow of two points on its direction', () => {
  // 40 along x and 30 along y, seen along 60 degrees: 40 cos 60 + 30 sin 60.
  const made = explode(linear([0, 0], [40, 30], 60, [-20, 0]), DEFAULT_STYLE);
  expect(made.value).toBeCloseTo(20 + 15 * Math.sqrt(3), 12);
});

test('the order of the points changes neither the value nor the way the text reads', () => {
  const there = explode(linear([0, 0], [60, 0], 0, [0, 10]), DEFAULT_STYLE);
  const back = explode(linear([60, 0], [0, 0], 180, [0, 10]), DEFAULT_STYLE);
  expect(back.value).toBe(there.value);
  expect(back.textAt).toEqual(there.textAt);
  expect(letters(back).rotation).toBe(0);
});

describe('where there is no room', () => {
  test('the text goes beyond the second point, the arrowheads outside, pointing at each other', () => {
    const made = explode(linear([0, 0], [5, 0], 0, [0, 10]), DEFAULT_STYLE);
    expect(made.textAt[0]).toBeGreaterThan(5 + 2.5);
    const [left, right] = heads(made);
    expect(left!.corners[1][0]).toBeCloseTo(-2.5, 9);
    expect(right!.corners[1][0]).toBeCloseTo(7.5, 9);
  });

  test('arrowheads stay inside where only the text does not fit', () => {
    const made = explode(linear([0, 0], [8, 0], 0, [0, 10]), {
      ...DEFAULT_STYLE,
      lengths: { system: 'both', denominator: 64, rounding: 'nearest', decimals: 1 },
    });
    expect(heads(made)[0]!.corners[1][0]).toBeCloseTo(2.5, 9);
    expect(made.textAt[0]).toBeGreaterThan(8);
  });

  test('the maker may say where', () => {
    const before = explode(linear([0, 0], [5, 0], 0, [0, 10], { placement: { text: 'before' } }), DEFAULT_STYLE);
    expect(before.textAt[0]).toBeLessThan(0);
    const free = explode(linear([0, 0], [5, 0], 0, [0, 10], { placement: { text: [2.5, 30] } }), DEFAULT_STYLE);
    expect(free.textAt).toEqual([2.5, 30]);
    expect(lines(free).at(-1)!.points).toEqual([
      [2.5, 10],
      [2.5, 30 - 0.8 - 1.25],
    ]); // the leader
    const strokes = explode(
      linear([0, 0], [5, 0], 0, [0, 10], { placement: { ends: ['stroke', 'out'] } }),
      DEFAULT_STYLE,
    );
    expect(heads(strokes)).toHaveLength(1);
  });
});

test('at 1:10 everything bound to the paper is ten times as large in the model', () => {
  const made = explode(linear([0, 0], [2000, 0], 0, [0, 100]), { ...DEFAULT_STYLE, scale: 10 });
  expect(lines(made)[0]!.points).toEqual([
    [0, 15],
    [0, 120],
  ]);
  expect(letters(made).height).toBe(2.5); // a text entity says paper mm
  expect(made.textAt[1]).toBeCloseTo(100 + 8 + 12.5, 9);
});

test('nothing to measure is an error that says where', () => {
  expect(() => explode(linear([7, 0], [7, 9], 0, [0, 20]), DEFAULT_STYLE)).toThrow(
    'along the dimension line, the two points of a linear dimension both lie at 7, 20',
  );
  expect(() => explode(aligned([1, 2], [1, 2], [0, 0]), DEFAULT_STYLE)).toThrow('both lie at 1, 2');
  expect(() => explode(linear([0, 0], [9, 0], 0, [0, 20]), { ...DEFAULT_STYLE, scale: 0 })).toThrow('scale of 0');
});

test('a leader ends at the near corner of a text that was moved aside', () => {
  const made = explode(linear([0, 0], [5, 0], 0, [0, 10], { placement: { text: [40, 20] } }), DEFAULT_STYLE);
  const half = (6 * 0.85 * 2.5) / 2; // 13/64" has six characters
  expect(lines(made).at(-1)!.points).toEqual([
    [2.5, 10],
    [40 - half, 20 - 0.8 - 1.25],
  ]);
});
