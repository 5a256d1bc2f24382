import { describe, expect, test } from 'vitest';
import { hiddenLines } from '../../lib/derive/drawings/hidden-lines.ts';
import type { PlacedSolid } from '../../lib/derive/drawings/placed-solid.ts';
import { viewFrom } from '../../lib/derive/drawings/view.ts';
import type { ViewLine } from '../../lib/derive/drawings/view-line.ts';
import { panelSolid } from '../../lib/derive/solids/panel.ts';
import { sweep } from '../../lib/derive/solids/prism.ts';
import { facetOutline, type Outline, roundCorner } from '../../lib/geometry/outline.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import { at, roundOver } from './scenes.ts';

/** Show face up. */
const UP = { origin: [0, 0, 30], x: [1, 0, 0], y: [0, -1, 0] } as const;

const slab = (radius: number): PlacedSolid => ({
  part: 'slab',
  solid: panelSolid(
    {
      kind: 'panel',
      length: 300,
      width: 200,
      underside: { take: 'lowest', planes: [{ name: 'flat', a: 0, b: 0, c: 30 }] },
    },
    [roundOver('show', radius)],
  ),
  frame: UP,
});

/** Over the corner between the front (y = -100) and the far end; right = (3, 5, 0) / √34. */
const OVER_CORNER = viewFrom([5, -3, 4]);

const longInner = (lines: readonly ViewLine[]): ViewLine[] =>
  lines.filter((l) => !l.outline && Math.hypot(l.to[0] - l.from[0], l.to[1] - l.from[1]) > 40);

describe('a round-over', () => {
  test('leaves no line for its facets, nor where it runs out', () => {
    const lines = hiddenLines([slab(5)], OVER_CORNER, { hidden: false, arris: 0 });
    expect(longInner(lines)).toEqual([]);
    expect(lines.filter((l) => l.outline).length).toBeGreaterThan(4);
  });

  test('would leave one for each if the facets were surfaces of their own', () => {
    const { part, solid, frame } = slab(5);
    const torn = { ...solid, faces: solid.faces.map((f, i) => ({ ...f, surface: `${f.surface}.${i}` })) };
    const lines = hiddenLines([{ part, solid: torn, frame }], OVER_CORNER, { hidden: false, arris: 0 });
    // Each side has some facets, tilted by half a step, a step and a half, ... Toward front and far end all are in sight:
    // a line between each two of them and one at each border, twice. On the back (normal (0, sin, cos)) they are as far
    // as tan < 4/3: so many of them, and as many lines. On the near end as far as tan < 4/5.
    const facets = solid.faces.filter((f) => f.surface === 'profile.show.edge.left').length;
    const inSight = (most: number): number =>
      Array.from({ length: facets }, (_, k) => Math.tan(((k + 0.5) * Math.PI) / 2 / facets)).filter((t) => t < most)
        .length;
    expect(longInner(lines)).toHaveLength(2 * (facets + 1) + inSight(4 / 3) + inSight(4 / 5));
  });

  test('is drawn by one line along its middle while it is narrow', () => {
    // Radius 5 is 5 √2 = 7.07 mm straight across. The middle of the front one lies 5 - 5 sin 45° = 1.464 mm in from the
    // front and that of the far end as much in from there: they meet at x = 300 - 1.464, y = -100 + 1.464.
    const lines = longInner(hiddenLines([slab(5)], OVER_CORNER, { hidden: false }));
    expect(lines).toHaveLength(2);
    const inset = 5 - 5 * Math.SQRT1_2;
    const corner = (3 * (300 - inset) + 5 * (-100 + inset)) / Math.sqrt(34);
    for (const { from, to } of lines)
      expect(Math.min(Math.abs(from[0] - corner), Math.abs(to[0] - corner))).toBeLessThan(1e-9);
    expect(longInner(hiddenLines([slab(8.4)], OVER_CORNER, { hidden: false }))).toHaveLength(2); // 11.88 mm
    expect(longInner(hiddenLines([slab(8.6)], OVER_CORNER, { hidden: false }))).toHaveLength(0); // 12.16 mm
    expect(longInner(hiddenLines([slab(8.6)], OVER_CORNER, { hidden: false, arris: 13 }))).toHaveLength(2);
  });

  test('shows where it turns out of sight', () => {
    // From behind the far end and a little below the show face's plane the round-over's own outline is the upper border.
    const lines = hiddenLines([slab(5)], viewFrom([1, 0, -0.2]), { hidden: false, arris: 0 });
    const highest = Math.max(...lines.flatMap((l) => [l.from[1], l.to[1]]));
    const upper = lines.filter((l) => Math.abs(l.from[1] - highest) < 1e-9 && Math.abs(l.to[1] - highest) < 1e-9);
    expect(upper).toHaveLength(1);
    expect(upper[0]!.outline).toBe(true);
  });
});

test('a rounded corner of an outline leaves no lines, a square one and the ridge of a taper do', () => {
  const square = [
    { x: 0, y: 0, surface: 'a' },
    { x: 100, y: 0, surface: 'b' },
    { x: 100, y: 60, surface: 'ridge.left' },
    // The ridge turns by 2 atan(2/50) = 4.6 degrees, less than a facet of the round (7.5).
    { x: 50, y: 62, surface: 'ridge.right' },
    { x: 0, y: 60, surface: 'c' },
  ];
  const rounded = facetOutline(roundCorner(square, 1, 30));
  const bar = (outline: typeof rounded): PlacedSolid => ({
    part: 'bar',
    solid: sweep(outline, outline, 200, (x, y, along) => [x, y, along], { near: 'near', far: 'far' }),
    frame: at([0, 0, 0]),
  });
  const visible = (solid: PlacedSolid, toward: readonly [number, number, number]): ViewLine[] =>
    longInner(hiddenLines([solid], viewFrom(toward), { hidden: false })).filter(
      (l) => Math.abs(l.from[0] - l.to[0]) < 1e-9,
    );
  expect(visible(bar(square), [1, -1, 0.5])).toHaveLength(1);
  expect(visible(bar(rounded), [1, -1, 0.5])).toHaveLength(0);
  expect(visible(bar(rounded), [0, 1, 0.5])).toHaveLength(1);
});

/** A bar along z from an outline, seen from the front and a little above: its long inner lines run along z. */
function alongBar(outline: Outline, toward: Vec3): ViewLine[] {
  const facets = facetOutline(outline, 15);
  const solid = sweep(facets, facets, 200, (x, y, along) => [x, y, along], { near: 'near', far: 'far' });
  return longInner(hiddenLines([{ part: 'bar', solid, frame: at([0, 0, 0]) }], viewFrom(toward), { hidden: false }));
}

test('a curve that meets a flat in a corner keeps the line of that corner', () => {
  // Half a disc: the arc meets the flat at 90 degrees. The flat looks to -x; from here one sees it, the corner where it
  // meets the arc at y = 20, and the arc beyond.
  const half: Outline = [
    { x: 0, y: -20, bulge: 1, surface: 'arc' },
    { x: 0, y: 20, surface: 'flat' },
  ];
  expect(alongBar(half, [-1, 1, 0.2])).toHaveLength(1);
});

test('a nose has no arris, a quarter round of the same width has', () => {
  // A point of 30 degrees rounded by 5 turns by 150 degrees and is 2 * 5 * sin 75° = 9.66 mm straight across; a quarter
  // round of radius 7 is 9.9 mm. Both are below the 12 mm of an arris, and all of both lies open to the viewer.
  const point: Outline = [
    { x: 100, y: 0, surface: 'a' },
    { x: 0, y: 26.795, surface: 'b' },
    { x: 0, y: -26.795, surface: 'c' },
  ];
  expect(alongBar(roundCorner(point, 0, 5), [1, 0, 0.2])).toHaveLength(0);
  const quarter: Outline = [
    { x: 0, y: 0, surface: 'a' },
    { x: 33, y: 0, bulge: Math.tan(Math.PI / 8), surface: 'round' },
    { x: 40, y: 7, surface: 'b' },
    { x: 40, y: 30, surface: 'c' },
    { x: 0, y: 30, surface: 'd' },
  ];
  expect(alongBar(quarter, [1, -1, 0.2])).toHaveLength(1);
});
