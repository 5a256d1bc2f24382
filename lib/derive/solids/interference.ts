import { toOuter, turnOut } from '../../geometry/frame.ts';
import { type Assembly, pieces, placeOf } from '../../model/assembly.ts';
import type { PartId } from '../../model/part.ts';
import { boxGap, type Convex, movedBy, separation } from './convex.ts';
import { convexPieces } from './convex-pieces.ts';
import { boundsOf } from './solid.ts';

/** Two pieces of wood that are closer than asked. */
export interface Encounter {
  readonly a: PartId;
  readonly b: PartId;
  /** mm between them; negative by the depth of the overlap. */
  readonly gap: number;
}

export interface PlacedPiece {
  readonly id: PartId;
  readonly convexes: readonly Convex[];
  /** mm, lowest point over the floor. */
  readonly lowest: number;
}

/** Every piece of wood where it stands, as convex pieces. */
export function placedPieces(assembly: Assembly): PlacedPiece[] {
  return pieces(assembly).map((part) => {
    const frame = placeOf(assembly, part.id);
    const convexes = convexPieces(part.body).map((c) =>
      movedBy(
        c,
        (p) => toOuter(frame, p),
        (d) => turnOut(frame, d),
      ),
    );
    const lowest = Math.min(...convexes.map((c) => c.bounds.min[2]));
    return { id: part.id, convexes, lowest };
  });
}

/** All pairs of pieces nearer to each other than `near` mm. A tenon and the parts it sits in are not a pair. */
export function encounters(assembly: Assembly, placed: readonly PlacedPiece[], near: number): Encounter[] {
  const housed = new Set(tenonPairs(assembly).map(([a, b]) => pairKey(a, b)));
  const boxes = placed.map((p) => boundsOf(p.convexes.flatMap((c) => [c.bounds.min, c.bounds.max])));
  const found: Encounter[] = [];
  placed.forEach((a, i) => {
    for (let j = i + 1; j < placed.length; j++) {
      const b = placed[j]!;
      if (boxGap(boxes[i]!, boxes[j]!) > near || housed.has(pairKey(a.id, b.id))) continue;
      const gap = leastGap(a.convexes, b.convexes, near);
      if (gap <= near) found.push({ a: a.id, b: b.id, gap });
    }
  });
  return found;
}

function leastGap(a: readonly Convex[], b: readonly Convex[], near: number): number {
  let least = Infinity;
  for (const p of a) {
    for (const q of b) {
      if (boxGap(p.bounds, q.bounds) <= near) least = Math.min(least, separation(p, q, near));
    }
  }
  return least;
}

/** Every tenon with every piece of wood that it is let into: the parts of its joint, or the members of a glued part. */
export function tenonPairs(assembly: Assembly): [tenon: PartId, piece: PartId][] {
  const members = new Map(assembly.parts.map((p) => [p.id, p.members ?? [p.id]]));
  return assembly.joints.flatMap((joint) => {
    const housing = joint.sides.flatMap((side) => members.get(side.part) ?? []);
    return joint.tenons.flatMap((tenon) => housing.map((id): [PartId, PartId] => [tenon, id]));
  });
}

const pairKey = (a: PartId, b: PartId): string => (a < b ? `${a} ${b}` : `${b} ${a}`);
