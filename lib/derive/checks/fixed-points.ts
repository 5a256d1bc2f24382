import { toOuter } from '../../geometry/frame.ts';
import { dot, scale, sub, type Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import type { Bore, Mortise } from '../../model/feature.ts';
import type { Part, PartId } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';

/** A piece that another one holds at two places across its grain, while the other does not move that way. */
export interface FixedAcross {
  readonly held: Part;
  readonly by: Part;
  /** Screws, or tenons with glue. */
  readonly with: 'screws' | 'tenons' | 'screws and tenons';
  readonly count: number;
  /** Across the grain of the one and along that of the other, from the first to the last. */
  readonly apart: Mm;
  /** The screws or the joint, by id. */
  readonly where: readonly string[];
}

/** Places nearer to each other than this give with the joint, mm (our convention). */
const NEAR: Mm = 50;

interface Point {
  readonly id: string;
  readonly kind: 'screws' | 'tenons';
  /** mm, in the table's frame. */
  readonly at: Vec3;
}

/**
 * All pieces that are held so. Handled: screws in round holes and glued tenons between two pieces; not handled: two
 * holds through different pieces of one base, and faces glued without tenons.
 */
export function piecesFixedAcross(assembly: Assembly): FixedAcross[] {
  return [...fixedPairs(assembly)].flatMap(([pair, points]) => {
    const [a, b] = pair.split(' ').map((id) => partOf(assembly, id)) as [Part, Part];
    return [
      [a, b],
      [b, a],
    ].flatMap(([held, by]) => heldAcross(assembly, held!, by!, points) ?? []);
  });
}

function heldAcross(assembly: Assembly, held: Part, by: Part, points: readonly Point[]): FixedAcross | undefined {
  const grain = placeOf(assembly, held.id).x;
  const other = placeOf(assembly, by.id).x;
  const across = (p: Vec3): Mm => dot(sub(p, scale(grain, dot(p, grain))), other);
  const places = points.map((p) => across(p.at));
  const apart = Math.max(...places) - Math.min(...places);
  if (points.length < 2 || apart < NEAR) return undefined;
  const kinds = new Set(points.map((p) => p.kind));
  const kind = kinds.size === 2 ? 'screws and tenons' : points[0]!.kind;
  return { held, by, with: kind, count: points.length, apart, where: points.map((p) => p.id) };
}

/** Where two pieces are held to each other so that neither can slide, by the ids of the two. */
function fixedPairs(assembly: Assembly): Map<string, Point[]> {
  const pairs = new Map<string, Point[]>();
  const put = (a: PartId, b: PartId, point: Point): void => {
    const pair = a < b ? `${a} ${b}` : `${b} ${a}`;
    pairs.set(pair, [...(pairs.get(pair) ?? []), point]);
  };
  const mouth = (id: PartId, feature: string): Vec3 => {
    const cut = partOf(assembly, id).features.find((f): f is Bore | Mortise => f.id === feature)!;
    return toOuter(placeOf(assembly, id), cut.at);
  };
  for (const { id, hold, base, into, pilotFeature } of assembly.fixings) {
    if (hold === 'fixed') put(base, into, { id, kind: 'screws', at: mouth(into, pilotFeature) });
  }
  for (const { id, kind, sides } of assembly.joints) {
    const [first, second] = sides;
    if (kind !== 'frame') continue;
    for (const f of first.features) put(first.part, second.part, { id, kind: 'tenons', at: mouth(first.part, f) });
  }
  return pairs;
}
