import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Text } from '../../lib/drawing/entity.ts';
import { explode } from '../../lib/drawing/explode.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { upright } from '../../lib/drawing/vec.ts';
import { aligned, angular, diameter, radius, ray } from './samples.ts';

test.each([
  [0, 0],
  [90, 90],
  [-90, 90],
  [180, 0],
  [270, 90],
  [45, 45],
  [225, 45],
  [135, -45],
  [91.6, 91.6], // a tapered edge that leans a little still reads from the right
  [-88.4, 91.6],
  [120, -60],
])('lettering along %d degrees is turned by %d', (angle, turned) => {
  expect(upright(angle)).toBeCloseTo(turned, 9);
});

test('no dimension is lettered upside down, whatever way it runs', () => {
  const text = (made: ReturnType<typeof explode>): Text =>
    made.entities.find((mark): mark is Text => mark.kind === 'text')!;
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 360, noNaN: true }),
      fc.double({ min: 3, max: 200, noNaN: true }),
      (angle, size) => {
        const end = ray([7, 9], angle, size);
        const side = ray([7, 9], angle + 20, 30);
        const dims = [
          aligned([7, 9], end, [0, 0]),
          radius([7, 9], end),
          diameter([7, 9], end),
          angular([[7, 9], end], [[7, 9], side], ray([7, 9], angle + 10, 30)),
        ];
        for (const dim of dims) {
          const { rotation } = text(explode(dim, DEFAULT_STYLE));
          expect(rotation).toBeGreaterThan(-75.000001);
          expect(rotation).toBeLessThan(105.000001);
        }
      },
    ),
    { seed: 4, numRuns: 300 },
  );
});
