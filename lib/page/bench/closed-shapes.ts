import { type ShapesAsked, shapesAsked } from '../../derive/solids/shapes-asked.ts';
import type { Assembly } from '../../model/assembly.ts';
import { isPocket } from '../../model/feature.ts';

/**
 * Shapes for a picture with all joints closed: strips of a glued panel without the slots in their edges, most of all faces
 * and none of them seen. One piece after the other, as `shapesAsked`.
 */
export function closedShapes(): (assembly: Assembly, shapes: ShapesAsked) => ShapesAsked {
  const ask = shapesAsked();
  return (assembly, shapes) => {
    const inside = new Set(assembly.parts.flatMap((part) => part.members ?? []));
    const strips = assembly.parts.filter(({ id }) => inside.has(id));
    const plain = ask({
      ...assembly,
      parts: strips.map((part) => ({ ...part, features: part.features.filter((feature) => !isPocket(feature)) })),
    });
    return { get: (id) => (inside.has(id) ? plain.get(id) : shapes.get(id)) };
  };
}
