import load, { type Manifold, type Mat4 } from 'manifold-3d';
import { type Frame, zAxis } from '../../lib/geometry/frame.ts';
import type { Vec2, Vec3 } from '../../lib/geometry/vec.ts';

// The second opinion on solids: manifold-3d, which shares no line with the library.

export type Body = Manifold;

const kernel = await load();
kernel.setup();

const alive: Manifold[] = [];

/** Bodies live outside the garbage collector; `release` frees all that were made since the last time. */
const kept = (body: Manifold): Manifold => {
  alive.push(body);
  return body;
};

export function release(): void {
  for (const body of alive.splice(0)) body.delete();
}

/** A mesh of triangles as a body. It takes coordinates as float32. @throws Error when it is not a closed, oriented surface. */
export function ofMesh(vertices: readonly Vec3[], triangles: readonly number[]): Body {
  const mesh = new kernel.Mesh({
    numProp: 3,
    vertProperties: new Float32Array(vertices.flat()),
    triVerts: new Uint32Array(triangles),
  });
  return kept(kernel.Manifold.ofMesh(mesh));
}

/**
 * The same with coordinates in double precision: taken in as float32, then every vertex is put where it belongs.
 *
 * @throws Error when two vertices are one in float32.
 */
export function exactly(vertices: readonly Vec3[], triangles: readonly number[]): Body {
  const place = new Map(vertices.map((p) => [p.map(Math.fround).join(), p]));
  const moved = ofMesh(vertices, triangles).warp((p) => {
    const to = place.get(p.join());
    if (!to) throw new Error(`a vertex at ${p.join(', ')} is not one of the mesh`);
    [p[0], p[1], p[2]] = to;
  });
  return kept(moved.setTolerance(1e-9));
}

/** A counter-clockwise polygon in x and y, drawn out along z. */
export const extrude = (polygon: readonly Vec2[], height: number): Body =>
  kept(kernel.Manifold.extrude([polygon.map(([x, y]): [number, number] => [x, y])], height));

/** A box from the origin. */
export const box = (x: number, y: number, z: number): Body => kept(kernel.Manifold.cube([x, y, z]));

/** A half-space: the points p with `out` · p <= `most`. */
export interface HalfSpace {
  readonly out: Vec3;
  readonly most: number;
}

/** What of a body lies in all the half-spaces. */
export const trim = (body: Body, spaces: readonly HalfSpace[]): Body =>
  spaces.reduce((rest, { out, most }) => {
    const size = Math.hypot(...out);
    return kept(rest.trimByPlane([-out[0] / size, -out[1] / size, -out[2] / size], -most / size));
  }, body);

export const subtract = (body: Body, cutters: readonly Body[]): Body =>
  cutters.reduce((rest, cutter) => kept(rest.subtract(cutter)), body);

export const intersect = (a: Body, b: Body): Body => kept(a.intersect(b));

/** A body where it stands. */
export function placed(body: Body, frame: Frame): Body {
  const columns = [frame.x, frame.y, zAxis(frame)].flatMap((axis) => [...axis, 0]);
  return kept(body.transform([...columns, ...frame.origin, 1] as unknown as Mat4));
}
