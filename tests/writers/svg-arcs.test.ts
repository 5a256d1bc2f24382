import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bulgeOf } from '../../lib/drawing/bulge.ts';
import type { Mark } from '../../lib/drawing/entity.ts';
import { LAYERS } from '../../lib/drawing/layers.ts';
import { writeSvg } from '../../lib/writers/svg.ts';
import { LEG, poly, ray } from '../drawing/samples.ts';
import { elements, parseXml } from '../readers/xml.ts';

interface Seen {
  readonly center: readonly [number, number];
  readonly sweep: number;
}

/**
 * Center and swept angle of an arc command, as SVG 1.1, appendix F.6.5, computes them from its end points and flags;
 * here for a circle. The sweep is positive clockwise on the sheet, where y points down.
 */
function arcOf(
  from: readonly [number, number],
  r: number,
  large: boolean,
  clockwise: boolean,
  to: readonly [number, number],
): Seen {
  const [hx, hy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const rest = Math.max(0, (r * r) / (hx * hx + hy * hy) - 1);
  const sign = large === clockwise ? -1 : 1;
  const [cx, cy] = [sign * Math.sqrt(rest) * hy, -sign * Math.sqrt(rest) * hx];
  const center = [cx + (from[0] + to[0]) / 2, cy + (from[1] + to[1]) / 2] as const;
  const angle = ([x, y]: readonly [number, number]): number => Math.atan2(y - center[1], x - center[0]);
  const turned = angle(to) - angle(from);
  const full = 2 * Math.PI;
  const sweep = clockwise ? ((turned % full) + full) % full : -(((-turned % full) + full) % full);
  return { center, sweep: (sweep * 180) / Math.PI };
}

function arcs(mark: Mark): readonly Seen[] {
  const path = elements(parseXml(writeSvg({ ...LEG, entities: [mark] }, { decimals: 8 }))).find(
    (one) => one.name === 'path',
  )!;
  const seen: Seen[] = [];
  let here: readonly [number, number] = [0, 0];
  for (const [, command, rest] of path.attributes['d']!.matchAll(/([MLA])([^MLAZ]*)/g)) {
    const numbers = rest!.split(' ').map(Number);
    const to = numbers.slice(-2) as [number, number];
    if (command === 'A') seen.push(arcOf(here, numbers[0]!, numbers[3] === 1, numbers[4] === 1, to));
    here = to;
  }
  return seen;
}

test('a bulge becomes the arc that a reader of SVG computes', () => {
  const span = fc
    .double({ min: -340, max: 340, noNaN: true })
    .filter((turn) => Math.abs(turn) > 5 && Math.abs(Math.abs(turn) - 180) > 1);
  fc.assert(
    fc.property(span, fc.double({ min: 0, max: 360, noNaN: true }), (turn, start) => {
      const [a, b] = [ray([20, 30], start, 50), ray([20, 30], start + turn, 50)];
      const [seen] = arcs(poly([[a[0], a[1], bulgeOf(turn)], b]));
      expect(seen!.center[0]).toBeCloseTo(20, 4);
      expect(seen!.center[1]).toBeCloseTo(-30, 4);
      expect(seen!.sweep).toBeCloseTo(-turn, 4); // counter-clockwise in the model is against the clock on the sheet
    }),
    { seed: 65, numRuns: 300 },
  );
});

test.each([
  [10, 350, 340],
  [350, 10, 20],
  [0, 360, 360],
  [90, 270, 180],
])('an arc from %d to %d degrees turns by %d, in two pieces', (start, end, turn) => {
  const seen = arcs({ kind: 'arc', layer: LAYERS.OUTLINE, center: [5, -6], radius: 40, start, end });
  expect(seen).toHaveLength(2);
  expect(seen[0]!.sweep + seen[1]!.sweep).toBeCloseTo(-turn, 4);
  // Of a half circle the reader cannot tell the center from the ends to more than a few digits.
  for (const { center } of seen) {
    expect(center[0]).toBeCloseTo(5, 2);
    expect(center[1]).toBeCloseTo(6, 2);
  }
});
