import { type Assembly, visibleParts } from '../../model/assembly.ts';
import type { Part, PartId } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { boundsOf } from '../solids/solid.ts';
import { placedBox } from './room-under.ts';

/** Something that is carried in as one, with its blankets, mm: longest side first. */
export interface Load {
  readonly kind: 'top' | 'base' | 'frame' | 'whole';
  /** "top T", "base". */
  readonly name: string;
  /** The first part of it. */
  readonly part: PartId;
  readonly sides: readonly [long: Mm, middle: Mm, short: Mm];
}

/**
 * What a piece comes apart into: a top that is screwed on and the base under it; a piece without such a top goes whole.
 * A load is the box around its parts.
 */
export function packedLoads(assembly: Assembly, packing: Mm): Load[] {
  const parts = visibleParts(assembly).filter((p) => p.kind !== 'looseTenon');
  const top = parts.find((p) => assembly.fixings.some((f) => f.into === p.id) && p.body.kind === 'panel');
  if (!top) return [load(assembly, 'whole', assembly.title, parts, packing)];
  const base = parts.filter((p) => p !== top);
  return [
    load(assembly, 'top', `${top.name} ${top.mark}`, [top], packing),
    load(assembly, 'base', 'base', base, packing),
  ];
}

/** The base without its stretchers: each frame as one load, when there is more than one. */
export function frameLoads(assembly: Assembly, packing: Mm): Load[] {
  const parts = visibleParts(assembly).filter(
    (p) => p.kind !== 'looseTenon' && p.kind !== 'stretcher' && p.body.kind !== 'panel',
  );
  const groups = joinedGroups(assembly, parts);
  return groups.length > 1 ? groups.map((group) => load(assembly, 'frame', 'frame', group, packing)) : [];
}

function joinedGroups({ joints, fixings }: Assembly, parts: readonly Part[]): Part[][] {
  const group = new Map<PartId, Set<Part>>(parts.map((p) => [p.id, new Set([p])]));
  const pairs: (readonly [PartId, PartId])[] = [
    ...joints.map(({ sides: [a, b] }) => [a.part, b.part] as const),
    ...fixings.map((f) => [f.base, f.into] as const),
  ];
  for (const [a, b] of pairs) {
    const [p, q] = [group.get(a), group.get(b)];
    if (!p || !q || p === q) continue;
    for (const part of q) {
      p.add(part);
      group.set(part.id, p);
    }
  }
  return [...new Set(group.values())].map((set) => [...set]);
}

function load(assembly: Assembly, kind: Load['kind'], name: string, parts: readonly Part[], packing: Mm): Load {
  const { min, max } = boundsOf(parts.flatMap((p) => Object.values(placedBox(assembly, p))));
  const sides = ([0, 1, 2] as const).map((k) => max[k] - min[k] + 2 * packing).sort((a, b) => b - a);
  return { kind, name, part: parts[0]!.id, sides: sides as unknown as Load['sides'] };
}
