import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import design from '../../designs/reading-table/design.ts';
import { CUT_FACE, cutSolid } from '../../lib/derive/drawings/cut-solid.ts';
import { shapesOf } from '../../lib/derive/solids/shapes.ts';
import { areaOf, openEdges, type Solid, volumeOf } from '../../lib/derive/solids/solid.ts';
import { unit, type Vec3 } from '../../lib/geometry/vec.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';
import { block } from './scenes.ts';

const capArea = (solid: Solid): number =>
  areaOf({ vertices: solid.vertices, faces: solid.faces.filter((f) => f.surface === CUT_FACE) });

describe('a solid cut by a plane', () => {
  test('a block is halved, and its cut face is its cross section', () => {
    const half = cutSolid(block([40, 50, 60]), { normal: [1, 0, 0], offset: 15 })!;
    expect(volumeOf(half)).toBeCloseTo(15 * 50 * 60, 9);
    expect(capArea(half)).toBeCloseTo(50 * 60, 9);
    expect(openEdges(half)).toEqual([]);
  });

  test('a plane through a face leaves all or nothing', () => {
    expect(volumeOf(cutSolid(block([40, 50, 60]), { normal: [1, 0, 0], offset: 40 })!)).toBeCloseTo(120_000, 6);
    expect(cutSolid(block([40, 50, 60]), { normal: [1, 0, 0], offset: 0 })).toBeUndefined();
  });

  test('both sides of any cut through any part of the table add up to the part, and both are closed', () => {
    const assembly = trestleTable(readValues(design.params, design.values).values!);
    const solids = [...new Set([...shapesOf(assembly).values()].map(({ solid }) => solid))];
    const number = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.nat(solids.length - 1),
        fc.tuple(number, number, number).filter((d) => Math.hypot(...d) > 0.1),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (which, direction, share) => {
          const solid = solids[which]!;
          const normal = unit(direction as Vec3);
          const heights = solid.vertices.map((p) => p[0] * normal[0] + p[1] * normal[1] + p[2] * normal[2]);
          const [low, high] = [Math.min(...heights), Math.max(...heights)];
          const offset = low + share * (high - low);
          const lower = cutSolid(solid, { normal, offset })!;
          const upper = cutSolid(solid, { normal: [-normal[0], -normal[1], -normal[2]], offset: -offset })!;
          expect(openEdges(lower)).toEqual([]);
          expect(openEdges(upper)).toEqual([]);
          expect((volumeOf(lower) + volumeOf(upper)) / volumeOf(solid)).toBeCloseTo(1, 9);
          expect(capArea(lower) / capArea(upper)).toBeCloseTo(1, 9);
        },
      ),
      { seed: 7, numRuns: 150 },
    );
  });
});
