import { shapesOf } from '../../lib/derive/solids/shapes.ts';
import { toInner, toOuter } from '../../lib/geometry/frame.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import { type Assembly, placeOf } from '../../lib/model/assembly.ts';

/** Room of one half of a tenon in its mortise, mm, measured on the placed solids alone. */
export interface Room {
  readonly tenon: string;
  readonly side: 0 | 1;
  /** From the tenon to the walls at its two edges and its two cheeks. */
  readonly ends: readonly [number, number];
  readonly cheeks: readonly [number, number];
  /** From the tip to the floor. */
  readonly floor: number;
}

const extent = (points: readonly Vec3[], k: 0 | 1 | 2): readonly [number, number] => {
  const all = points.map((p) => p[k]);
  return [Math.min(...all), Math.max(...all)];
};

/** Every half of every tenon of a piece, by the corners of the facets of its mortise. */
export function roomsOf(assembly: Assembly): Room[] {
  const shapes = shapesOf(assembly);
  return assembly.joints.flatMap((joint) =>
    joint.tenons.flatMap((tenon, n) =>
      joint.sides.map(({ part, features }, side): Room => {
        // Everything as the tenon sees it: x along its grain, y across its width, z through its thickness.
        const frame = placeOf(assembly, tenon);
        const { solid } = shapes.get(part)!;
        const seen = (surface: string): Vec3[] =>
          solid.faces
            .filter((f) => f.surface === surface)
            .flatMap((f) =>
              f.loops[0]!.map((i) => toInner(frame, toOuter(placeOf(assembly, part), solid.vertices[i]!))),
            );
        const own = shapes.get(tenon)!.solid.vertices;
        const [walls, floor] = [seen(`${features[n]}.wall`), seen(`${features[n]}.floor`)];
        const between = (k: 1 | 2): readonly [number, number] => {
          const [outer, inner] = [extent(walls, k), extent(own, k)];
          return [inner[0] - outer[0], outer[1] - inner[1]];
        };
        const tip = extent(own, 0);
        const bottom = extent(floor, 0)[0];
        const deep = bottom < tip[0] ? tip[0] - bottom : bottom - tip[1];
        return { tenon, side: side as 0 | 1, ends: between(1), cheeks: between(2), floor: deep };
      }),
    ),
  );
}
