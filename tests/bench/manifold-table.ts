import createModule, { type ManifoldToplevel } from 'manifold-3d';
import type { Solid } from '../../lib/derive/solids/solid.ts';
import { blankOf } from '../../lib/derive/solids/solid-of.ts';
import { triangulate } from '../../lib/derive/solids/triangulate.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import type { Pocket } from '../../lib/model/feature.ts';
import type { Part } from '../../lib/model/part.ts';
import { cutter } from './cutter.ts';
import type { Triangulated } from './triangulated.ts';

export async function loadManifold(): Promise<ManifoldToplevel> {
  const kernel = await createModule();
  kernel.setup();
  return kernel;
}

/** One part by booleans of manifold-3d. */
export function manifoldPart(kernel: ManifoldToplevel, part: Part, pockets: readonly Pocket[]): Triangulated {
  const body = (solid: Solid) =>
    new kernel.Manifold(
      new kernel.Mesh({
        numProp: 3,
        vertProperties: new Float32Array(solid.vertices.flat()),
        triVerts: new Uint32Array(triangulate(solid)),
      }),
    );
  const blank = blankOf(part);
  const parts = [body(blank), ...pockets.map((p) => body(cutter(p, blank)))];
  const done = kernel.Manifold.difference(parts);
  const mesh = done.getMesh();
  for (const p of [...parts, done]) p.delete();
  const vertices: Vec3[] = [];
  for (let i = 0; i < mesh.vertProperties.length; i += 3) {
    vertices.push([mesh.vertProperties[i]!, mesh.vertProperties[i + 1]!, mesh.vertProperties[i + 2]!]);
  }
  return { vertices, triangles: [...mesh.triVerts] };
}
