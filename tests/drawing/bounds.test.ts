import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bounds, boundsOf } from '../../lib/drawing/bounds.ts';
import { bulgeOf, sweep } from '../../lib/drawing/bulge.ts';
import type { Mark } from '../../lib/drawing/entity.ts';
import { LAYERS } from '../../lib/drawing/layers.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { linear, poly, ray } from './samples.ts';

const layer = LAYERS.OUTLINE;

describe('bounds', () => {
  test('a half circle as one bulge reaches its top', () => {
    const box = boundsOf(
      [
        poly([
          [0, 0],
          [10, 0, 1],
          [10, 6],
          [0, 6],
        ]),
      ],
      1,
    )!;
    expect(box.min[0]).toBeCloseTo(0, 12);
    expect(box.max[0]).toBeCloseTo(13, 12); // radius 3 beyond x = 10, counter-clockwise from below
  });

  test('an arc counts only the quarter points it passes', () => {
    const arc = (start: number, end: number): Mark => ({ kind: 'arc', layer, center: [0, 0], radius: 10, start, end });
    expect(boundsOf([arc(10, 80)], 1)!.max[0]).toBeCloseTo(10 * Math.cos(Math.PI / 18), 12);
    expect(boundsOf([arc(80, 10)], 1)).toEqual({ min: [-10, -10], max: [10, 10] });
    expect(boundsOf([arc(350, 20)], 1)!.max[0]).toBe(10);
  });

  test('text takes 0.85 of its height a character, turned as it is', () => {
    const text: Mark = { kind: 'text', layer, text: 'ABCD', at: [0, 0], height: 10, rotation: 90 };
    const { min, max } = boundsOf([text], 2)!;
    expect(max[1]).toBeCloseTo(4 * 0.85 * 20, 9);
    expect(min[0]).toBeCloseTo(-20, 9);
  });

  test('dimensions belong to the drawing; an empty one has no box', () => {
    const box = bounds({ title: '', style: DEFAULT_STYLE, entities: [linear([0, 0], [50, 0], 0, [0, 20])] })!;
    expect(box.max[1]).toBeGreaterThanOrEqual(22);
    expect(bounds({ title: '', style: DEFAULT_STYLE, entities: [] })).toBeUndefined();
  });
});

describe('a bulge', () => {
  test('is the tangent of a quarter of the angle: 1 for half a circle', () => {
    expect(bulgeOf(180)).toBeCloseTo(1, 12);
    expect(bulgeOf(-90)).toBeCloseTo(-(Math.SQRT2 - 1), 12); // tan 22.5 degrees
  });

  test('gives back the arc it was made from', () => {
    const span = fc.double({ min: -350, max: 350, noNaN: true }).filter((value) => Math.abs(value) > 0.5);
    fc.assert(
      fc.property(
        span,
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        (turn, start, radius) => {
          const [from, to] = [ray([3, -4], start, radius), ray([3, -4], start + turn, radius)];
          const made = sweep({ from, to, bulge: bulgeOf(turn) });
          expect(made.radius).toBeCloseTo(radius, 6);
          expect(made.center[0]).toBeCloseTo(3, 5);
          expect(made.center[1]).toBeCloseTo(-4, 5);
          expect(made.span).toBeCloseTo(turn, 8);
        },
      ),
      { seed: 9, numRuns: 500 },
    );
  });
});

test.each([
  ['left', 0, 17],
  ['center', -8.5, 8.5],
  ['right', -17, 0],
] as const)('text that is set %s of its point', (align, low, high) => {
  const box = boundsOf([{ kind: 'text', layer, text: '12', at: [0, 0], height: 10, align }], 1)!;
  expect([box.min[0], box.max[0]]).toEqual([low, high]);
});
