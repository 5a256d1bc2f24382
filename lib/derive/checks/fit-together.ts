import { partOf } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import type { PartId } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { type Encounter, encounters, type PlacedPiece, placedPieces, tenonPairs } from '../solids/interference.ts';
import { type Check, type CheckContext, called, say } from './check.ts';

/** Pieces that reach into each other by no more than this only touch, mm: rounding of sizes given to 1/64 in. */
const TOUCH: Mm = 0.01;

/** Pieces this close are taken to meet, mm. */
const NEAR: Mm = 0.05;

/** No two pieces of wood take the same room, and all hang together and stand on the floor. */
export const fitTogether: Check = {
  name: 'pieces fit together',
  run(context) {
    const placed = placedPieces(context.assembly);
    const pairs = encounters(context.assembly, placed, NEAR);
    const clashes = pairs.filter((p) => p.gap < -TOUCH).map((p) => clash(context, p));
    const adrift = loosePieces(context, placed, pairs).map((id) => floats(context, id));
    const found = [...clashes, ...adrift];
    return found.length > 0 ? found : [allWell(context, placed)];
  },
};

function clash(context: CheckContext, { a, b, gap }: Encounter): Finding {
  const [p, q] = [partOf(context.assembly, a), partOf(context.assembly, b)];
  return {
    check: fitTogether.name,
    verdict: 'change it',
    part: a,
    where: b,
    value: -gap,
    limit: 0,
    unit: 'mm',
    because: `${called(p)} and ${called(q)} reach into each other by ${say(context, -gap, 'up')}`,
    fixes: [`move or shorten one of them by ${say(context, -gap, 'up')}`],
    source: 'geometry of the design',
  };
}

function floats(context: CheckContext, id: PartId): Finding {
  const part = partOf(context.assembly, id);
  return {
    check: fitTogether.name,
    verdict: 'change it',
    part: id,
    unit: 'mm',
    because: `${called(part)} touches nothing that stands on the floor`,
    fixes: ['join it to a neighbor'],
    source: 'geometry of the design',
  };
}

/** Pieces that no chain of touching pieces and tenons leads to from those that stand lowest. */
function loosePieces(
  { assembly }: CheckContext,
  placed: readonly PlacedPiece[],
  pairs: readonly Encounter[],
): PartId[] {
  const next = neighbors([...pairs.map(({ a, b }): [PartId, PartId] => [a, b]), ...tenonPairs(assembly)]);
  const floor = Math.min(...placed.map((p) => p.lowest));
  const reached = new Set(placed.filter((p) => p.lowest < floor + NEAR).map((p) => p.id));
  // A set hands out what is added to it while it is walked.
  for (const id of reached) for (const other of next.get(id) ?? []) reached.add(other);
  return placed.map((p) => p.id).filter((id) => !reached.has(id));
}

function neighbors(pairs: readonly (readonly [PartId, PartId])[]): ReadonlyMap<PartId, readonly PartId[]> {
  const next = new Map<PartId, PartId[]>();
  const link = (a: PartId, b: PartId): void => {
    const known = next.get(a);
    if (known) known.push(b);
    else next.set(a, [b]);
  };
  for (const [a, b] of pairs) {
    link(a, b);
    link(b, a);
  }
  return next;
}

const allWell = (context: CheckContext, placed: readonly PlacedPiece[]): Finding => ({
  check: fitTogether.name,
  verdict: 'ok',
  part: context.assembly.parts[0]!.id,
  value: 0,
  limit: TOUCH,
  unit: 'mm',
  because: `all ${placed.length} pieces touch without reaching into each other, and hang together down to the floor`,
  fixes: [],
  source: 'geometry of the design',
});
