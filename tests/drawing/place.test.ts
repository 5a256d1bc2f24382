import { expect, test } from 'vitest';
import { boundsOf } from '../../lib/drawing/bounds.ts';
import type { Mark } from '../../lib/drawing/entity.ts';
import { flatten } from '../../lib/drawing/flatten.ts';
import { LAYERS } from '../../lib/drawing/layers.ts';
import { layersOf } from '../../lib/drawing/layers-of.ts';
import { place } from '../../lib/drawing/place.ts';
import { LEG, linear, poly } from './samples.ts';

test('a view on a sheet is smaller by its scale, and its lettering is not', () => {
  const view = { ...LEG, style: { ...LEG.style, scale: 5 } };
  const marks = place(view, [100, 50]);
  const before = flatten(view);
  expect(marks).toHaveLength(before.length);
  const box = boundsOf(marks, 1)!;
  const full = boundsOf(before, 5)!;
  expect(box.min[0]).toBeCloseTo(100 + full.min[0] / 5, 9);
  expect(box.max[1]).toBeCloseTo(50 + full.max[1] / 5, 9);
  const heights = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.height] : []));
  expect(new Set(heights)).toEqual(new Set([2.5, 3.5]));
  expect(marks.some((mark) => mark.kind === 'text' && mark.text === '13 3/8"')).toBe(true);
});

test('a curve keeps its bulge', () => {
  const marks = place(
    {
      ...LEG,
      style: { ...LEG.style, scale: 2 },
      entities: [
        poly([
          [0, 0],
          [10, 0, 0.5],
          [10, 10],
        ]),
      ],
    },
    [0, 0],
  );
  expect(marks[0]).toMatchObject({
    points: [
      [0, 0],
      [5, 0, 0.5],
      [5, 5],
    ],
  });
});

test('layers come in the order of use; one name for two looks is an error', () => {
  expect(layersOf(LEG.entities).map((layer) => layer.name)).toEqual([
    'OUTLINE',
    'MORTISE',
    'BORE',
    'HIDDEN',
    'TEXT',
    'DIMENSION',
  ]);
  const other = { ...LAYERS.DIMENSION, width: 0.35 };
  expect(() => layersOf([...LEG.entities, linear([0, 0], [9, 0], 0, [0, 9], { layer: other })])).toThrow(
    'two layers are called DIMENSION',
  );
});

test('every layer of the shop is called by its key', () => {
  for (const [key, layer] of Object.entries(LAYERS)) expect(layer.name).toBe(key);
});

test('a circle shrinks with the view', () => {
  const hole: Mark = { kind: 'circle', layer: LAYERS.BORE, center: [10, 20], radius: 5 };
  const marks = place({ ...LEG, style: { ...LEG.style, scale: 5 }, entities: [hole] }, [1, 1]);
  expect(marks).toEqual([{ ...hole, center: [3, 5], radius: 1 }]);
});
