import jscad from '@jscad/modeling';
import type { Solid } from '../../lib/derive/solids/solid.ts';
import { blankOf } from '../../lib/derive/solids/solid-of.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import type { Pocket } from '../../lib/model/feature.ts';
import type { Part } from '../../lib/model/part.ts';
import { cutter } from './cutter.ts';
import type { Triangulated } from './triangulated.ts';

type Point = [number, number, number];

const body = ({ vertices, faces }: Solid) =>
  jscad.geometries.geom3.create(
    faces.map((f) => jscad.geometries.poly3.create(f.loops[0]!.map((i) => [...vertices[i]!] as Point))),
  );

/** One part by booleans of @jscad/modeling, its polygons fanned into triangles. */
export function jscadPart(part: Part, pockets: readonly Pocket[]): Triangulated {
  const blank = blankOf(part);
  const whole = body(blank);
  const done =
    pockets.length > 0 ? jscad.booleans.subtract(whole, ...pockets.map((p) => body(cutter(p, blank)))) : whole;
  const vertices: Vec3[] = [];
  const triangles: number[] = [];
  for (const polygon of jscad.geometries.geom3.toPolygons(done)) {
    const first = vertices.length;
    for (const [x, y, z] of polygon.vertices) vertices.push([x, y, z]);
    for (let k = 2; k < polygon.vertices.length; k++) triangles.push(first, first + k - 1, first + k);
  }
  return { vertices, triangles };
}
