import { describe, expect, test } from 'vitest';
import { type Fill, lookingFrom, PICTURE_VIEW, pictureOf } from '../../lib/derive/drawings/picture.ts';
import type { PlacedSolid } from '../../lib/derive/drawings/placed-solid.ts';
import { VIEWS, type View, viewFrom } from '../../lib/derive/drawings/view.ts';
import { shapesOf } from '../../lib/derive/solids/shapes.ts';
import { add, dot, scale, unit, type Vec2, type Vec3 } from '../../lib/geometry/vec.ts';
import { placeOf, visibleParts } from '../../lib/model/assembly.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { trestleParams } from '../../lib/tables/trestle/spec.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';
import { rayCaster } from './ray-caster.ts';
import { placedBlock, ring, smallTable, throughRail } from './scenes.ts';

/** The light of a picture, as it is documented: half from all around, half from above left of the front. */
const LIGHT = unit([-0.35, -0.6, 0.9]);
const toneOf = (normal: Vec3): number => (1 + dot(normal, LIGHT)) / 2;

function isInside(loops: Fill['loops'], [x, y]: Vec2): boolean {
  let inside = false;
  for (const loop of loops) {
    loop.forEach((a, i) => {
      const b = loop[(i + 1) % loop.length]!;
      if (a[1] > y !== b[1] > y && x < ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
    });
  }
  return inside;
}

const isNearBorder = (fills: readonly Fill[], [x, y]: Vec2): boolean =>
  fills.some(({ loops }) =>
    loops.some((loop) =>
      loop.some((a, i) => {
        const b = loop[(i + 1) % loop.length]!;
        const [u, v] = [b[0] - a[0], b[1] - a[1]];
        const t = Math.min(1, Math.max(0, ((x - a[0]) * u + (y - a[1]) * v) / (u * u + v * v)));
        return Math.hypot(x - a[0] - t * u, y - a[1] - t * v) < 0.01;
      }),
    ),
  );

/** Places where the last fill painted is not the face that a ray from the viewer meets first. */
function wrongPlaces(
  solids: readonly PlacedSolid[],
  view: View,
  fills: readonly Fill[],
  steps = 41,
): { wrong: string[]; painted: number } {
  const cast = rayCaster(solids);
  const all = fills.flatMap((f) => f.loops.flat());
  const range = (k: 0 | 1): [number, number] => [Math.min(...all.map((p) => p[k])), Math.max(...all.map((p) => p[k]))];
  const [[left, right], [low, high]] = [range(0), range(1)];
  const wrong: string[] = [];
  let painted = 0;
  for (let k = 0; k < steps * steps; k++) {
    // A raster that is no raster of the scene: the second step is the golden part of the first.
    const p: Vec2 = [
      left + ((right - left) * ((k % steps) + 0.382)) / steps,
      low + ((high - low) * ((Math.floor(k / steps) + 0.618 * (k % 7)) % steps)) / steps,
    ];
    const from = add(add(scale(view.right, p[0]), scale(view.up, p[1])), scale(view.toward, 1e4));
    const hit = cast(from, scale(view.toward, -1));
    const top = fills.findLast((f) => isInside(f.loops, p));
    if (top) painted++;
    const agrees = hit && top ? hit.part === top.part && Math.abs(toneOf(hit.normal) - top.tone) < 1e-9 : !hit && !top;
    if (!agrees && !isNearBorder(fills, p)) wrong.push(`${p.join(', ')}: painted ${top?.part}, meets ${hit?.part}`);
  }
  return { wrong, painted };
}

const LOOKS: Readonly<Record<string, View>> = {
  picture: PICTURE_VIEW,
  isometric: VIEWS.isometric,
  plan: VIEWS.plan,
  front: VIEWS.front,
  'from below': viewFrom([0.5, -0.8, -0.5]),
  'from behind': lookingFrom(200, 12),
};

for (const [scene, solids] of Object.entries({ 'small table': smallTable, ring, 'rail through a post': throughRail })) {
  describe(`fills of the ${scene}: the last one painted is the face one sees`, () => {
    for (const [name, view] of Object.entries(LOOKS)) {
      test(name, () => {
        const { fills } = pictureOf(solids(), view);
        const { wrong, painted } = wrongPlaces(solids(), view, fills);
        expect(wrong).toEqual([]);
        expect(painted).toBeGreaterThan(200);
      });
    }
  });
}

test('the comparison sees fills in a wrong order', () => {
  const { fills } = pictureOf(smallTable());
  expect(wrongPlaces(smallTable(), PICTURE_VIEW, [...fills].reverse()).wrong).not.toEqual([]);
});

test('boards in a ring have no order as wholes: seen from above, some face is cut', () => {
  // Seen straight down one sees the upper face of each and one edge or end: uncut there were at most three faces each.
  const { fills } = pictureOf(ring(), VIEWS.plan);
  expect(fills.length).toBeGreaterThan(3 * 3);
});

test('blocks that stand in each other still get a right order, cut where they meet', () => {
  const solids = [placedBlock('post', [40, 40, 200], [0, 0, 0]), placedBlock('beam', [200, 20, 30], [-80, 10, 90])];
  const { fills } = pictureOf(solids);
  expect(wrongPlaces(solids, PICTURE_VIEW, fills).wrong).toEqual([]);
});

test('a whole table with all its tenons in their mortises, though each runs from one part into another', () => {
  const { values } = readValues(trestleParams);
  const table = trestleTable(values!);
  const shapes = shapesOf(table);
  const solids = visibleParts(table).map(({ id }) => ({
    part: id,
    solid: shapes.get(id)!.solid,
    frame: placeOf(table, id),
  }));
  expect(solids.length).toBeGreaterThan(60);
  const { fills } = pictureOf(solids);
  // About 800 faces are turned to the viewer; cutting must not make a heap of splinters of them.
  expect(fills.length).toBeLessThan(2000);
  const { wrong, painted } = wrongPlaces(solids, PICTURE_VIEW, fills, 14);
  expect(wrong).toEqual([]);
  expect(painted).toBeGreaterThan(60);
});

describe('pictureOf', () => {
  test('paints three faces of a block, the top lightest and the far end darkest', () => {
    const { fills, lines } = pictureOf([placedBlock('block', [100, 100, 100], [0, 0, 0])]);
    expect(fills).toHaveLength(3);
    const tones = fills.map((f) => f.tone).sort((a, b) => a - b);
    expect(tones[2]).toBeCloseTo(toneOf([0, 0, 1]), 12);
    expect(tones[1]).toBeCloseTo(toneOf([0, -1, 0]), 12);
    expect(tones[0]).toBeCloseTo(toneOf([1, 0, 0]), 12);
    expect(lines.every((l) => l.kind === 'visible')).toBe(true);
  });

  test('throws the shadow straight down on the floor', () => {
    const view = lookingFrom(0, 30);
    const { shadow } = pictureOf([placedBlock('block', [100, 50, 10], [20, 0, 700])], view);
    // From the front, 30 degrees up: a point (x, y, 0) of the floor stands at x across and y sin 30° up.
    expect(shadow).toHaveLength(1);
    const corners = shadow[0]!.map(([x, y]) => `${x.toFixed(6)} ${y.toFixed(6)}`).sort();
    expect(corners).toEqual([
      '120.000000 0.000000',
      '120.000000 25.000000',
      '20.000000 0.000000',
      '20.000000 25.000000',
    ]);
  });

  test('looks from 32 degrees right of the front and 27 above the floor', () => {
    const { toward } = PICTURE_VIEW;
    expect((Math.atan2(toward[0], -toward[1]) * 180) / Math.PI).toBeCloseTo(32, 9);
    expect((Math.asin(toward[2]) * 180) / Math.PI).toBeCloseTo(27, 9);
  });
});
