import { expect, it } from 'vitest';
import reading from '../../designs/reading-table/design.ts';
import { faceTriangles } from '../../lib/derive/solids/face-triangles.ts';
import { cutPocket } from '../../lib/derive/solids/pocket.ts';
import { shapesOf } from '../../lib/derive/solids/shapes.ts';
import { blankOf } from '../../lib/derive/solids/solid-of.ts';
import { triangulate, triangulateFace } from '../../lib/derive/solids/triangulate.ts';
import { isPocket } from '../../lib/model/feature.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';

const table = trestleTable(readValues(reading.params, reading.values).values!);

it('tells the triangles of every face apart, the same as they are made one by one', () => {
  for (const [id, { solid, triangles }] of shapesOf(table)) {
    const { corners, starts } = faceTriangles(solid);
    expect(corners, id).toBe(triangles);
    expect(corners, id).toEqual(triangulate(solid));
    expect(starts).toHaveLength(solid.faces.length + 1);
    solid.faces.forEach((f, face) => {
      const alone: number[] = [];
      triangulateFace(solid.vertices, f, alone);
      expect(corners.slice(starts[face], starts[face + 1]), `${id} ${f.surface}`).toEqual(alone);
    });
  }
});

it('is made once, and anew when a pocket was cut in between', () => {
  const post = table.parts.find(({ kind }) => kind === 'post')!;
  const solid = blankOf(post);
  const before = faceTriangles(solid);
  expect(faceTriangles(solid)).toBe(before);
  expect(cutPocket(solid, post.features.filter(isPocket)[0]!)).toBeUndefined();
  expect(faceTriangles(solid).corners.length).toBeGreaterThan(before.corners.length);
  expect(faceTriangles(solid).corners).toEqual(triangulate(solid));
});
