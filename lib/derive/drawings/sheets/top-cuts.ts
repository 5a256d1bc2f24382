import { toOuter } from '../../../geometry/frame.ts';
import type { Vec2 } from '../../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../../model/assembly.ts';
import type { Part, PartId } from '../../../model/part.ts';
import type { Mm } from '../../../units/mm.ts';
import type { PlacedSolid } from '../placed-solid.ts';
import { cutFaces, cutPlaced } from '../section-view.ts';
import type { View } from '../view.ts';
import type { HalfCut } from './section-drawing.ts';
import type { SheetSource } from './sheet-source.ts';
import type { TopSection } from './top-section.ts';

/** Where along the top it is cut: through the slots nearest to its middle, or in the middle where there are none. */
export function cutStation(assembly: Assembly, { part, body }: TopSection): Mm {
  const middle = body.length / 2;
  const slots = (part.members ?? [])
    .flatMap((id) => partOf(assembly, id).features)
    .flatMap((f) => (f.kind === 'mortise' ? [f.at[0]] : []));
  return slots.reduce((best, x) => (Math.abs(x - middle) < Math.abs(best - middle) ? x : best), slots[0] ?? middle);
}

/**
 * Strips and tenons where the top is cut; mm outwards from the center line on one side of a view, and up from the show
 * face. On the left side of a view that is the section as seen from the other end.
 */
export function topCuts(
  { assembly, shapes }: SheetSource,
  top: TopSection,
  view: View,
  along: Mm,
): (side: 1 | -1) => HalfCut[] {
  const members = top.part.members ?? [];
  const inside = new Set<PartId>(members);
  const strips = members.length > 0 ? members.map((id) => partOf(assembly, id)) : [top.part];
  const tenons = assembly.joints
    .filter(({ sides }) => inside.has(sides[0].part))
    .flatMap((joint) => joint.tenons.map((id) => partOf(assembly, id)));
  const at = toOuter(top.frame, [along, 0, 0]);
  const offset = view.toward[0] * at[0];
  const placed = ({ id }: Part): PlacedSolid => ({
    part: id,
    solid: shapes.get(id)!.solid,
    frame: placeOf(assembly, id),
  });
  const cut = (part: Part, look: HalfCut['look']): HalfCut[] =>
    cutPlaced(placed(part), { normal: view.toward, offset })
      .flatMap((solid) => cutFaces(solid, view))
      .map((face) => ({ ...face, look }));
  const faces = [
    ...strips.flatMap((part, k) => cut(part, lookOf(strips, k))),
    ...tenons.flatMap((part) => cut(part, 'tenon')),
  ];
  return (side) =>
    faces.map((face) => ({
      ...face,
      loops: face.loops.map((loop) => loop.map(([x, y]): Vec2 => [side * x, y - at[2]])),
    }));
}

/** Hatches change from strip to strip and from layer to layer. */
function lookOf(strips: readonly Part[], k: number): HalfCut['look'] {
  const fromOf = ({ body }: Part): Mm => (body.kind === 'slice' ? body.from : 0);
  const edges = [...new Set(strips.map(fromOf))].sort((a, b) => a - b);
  const strip = edges.indexOf(fromOf(strips[k]!));
  const { body } = strips[k]!;
  const layer = body.kind === 'slice' && body.top > 0 ? 1 : 0;
  return (strip + layer) % 2 === 0 ? 'left' : 'right';
}
