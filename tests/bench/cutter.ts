import { pocketSection } from '../../lib/derive/solids/pocket-section.ts';
import { face, type Solid } from '../../lib/derive/solids/solid.ts';
import { add, dot, scale, sub, type Vec3 } from '../../lib/geometry/vec.ts';
import type { Pocket } from '../../lib/model/feature.ts';

/** How far a cutter stands out over the mouth, mm: flush cutters leave booleans with open edges. */
const OVERSHOOT = 1;

/** The wood that a pocket takes out, as a closed prism for a boolean. */
export function cutter(pocket: Pocket, blank: Solid): Solid {
  const n = pocket.into;
  const ring = pocketSection(pocket);
  const deep =
    pocket.depth === 'through'
      ? Math.max(...blank.vertices.map((p) => dot(sub(p, pocket.at), n))) + OVERSHOOT
      : pocket.depth;
  const out: Vec3[] = ring.map((p) => add(p, scale(n, -OVERSHOOT)));
  const vertices = [...out, ...ring.map((p) => add(p, scale(n, deep)))];
  const k = ring.length;
  const faces = ring.map((_, i) => {
    const j = (i + 1) % k;
    return face(vertices, 'side', [i, j, k + j, k + i]);
  });
  faces.push(
    face(
      vertices,
      'near',
      ring.map((_, i) => k - 1 - i),
    ),
  );
  faces.push(
    face(
      vertices,
      'far',
      ring.map((_, i) => k + i),
    ),
  );
  return { vertices, faces };
}
