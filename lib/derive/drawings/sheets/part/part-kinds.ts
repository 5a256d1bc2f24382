import { type Assembly, pieces } from '../../../../model/assembly.ts';
import { isPocket, type Pocket } from '../../../../model/feature.ts';
import { isGlueUp, type Part } from '../../../../model/part.ts';
import { inBuildingOrder } from '../../../cut-list/building-order.ts';
import { isFromOffcuts } from '../../../cut-list/cut-list.ts';
import { alikeAs } from './turned-alike.ts';

/** Parts that are made alike and share a sheet; the first is drawn. */
export interface PartKinds {
  readonly parts: readonly [Part, ...Part[]];
  /** Those that lie turned over in the piece: their reference edge or end is the far one of the drawing. */
  readonly turned: readonly Part[];
}

/** Every kind of part that has a sheet of its own, glue-ups before what they are made of, in building order. */
export function partKinds(assembly: Assembly): PartKinds[] {
  const own = [...assembly.parts.filter(isGlueUp), ...pieces(assembly)].filter((part) => !isFromOffcuts(part));
  const kinds: { parts: [Part, ...Part[]]; turned: Part[] }[] = [];
  for (const part of inBuildingOrder(assembly, own)) {
    const known = kinds.find(({ parts: [first] }) => likeness(part, first) !== undefined);
    if (!known) kinds.push({ parts: [part], turned: [] });
    else {
      if (likeness(part, known.parts[0]) === 'turned') known.turned.push(part);
      known.parts.push(part);
    }
  }
  return kinds;
}

/** Sizes that differ by less than this are one, mm. */
const SAME = 1e-3;

function likeness(part: Part, first: Part): ReturnType<typeof alikeAs> {
  if (part.kind !== first.kind || part.name !== first.name || part.wood !== first.wood) return undefined;
  if (part.notes.join() !== first.notes.join()) return undefined;
  if (part.body.kind === 'slice') return isSameStrip(part, first) ? 'as it lies' : undefined;
  const sizes = ['length', 'width', 'thickness'] as const;
  if (sizes.some((size) => Math.abs(part.finished[size] - first.finished[size]) > SAME)) return undefined;
  return alikeAs(part, first);
}

/**
 * Strips are slotted before they are glued and tapered, so that they are worked alike where blank and slots are; what is
 * left of their thickness stands in a table.
 */
function isSameStrip(part: Part, first: Part): boolean {
  const [a, b] = [part.body, first.body];
  if (a.kind !== 'slice' || b.kind !== 'slice') return false;
  return stripText(part, a.from, a.top) === stripText(first, b.from, b.top);
}

const near = (value: number): number => Math.round(value / SAME) + 0;

function stripText({ finished, rough, features }: Part, from: number, top: number): string {
  const { length, width } = finished;
  const slot = (p: Pocket): string => {
    const { id: _, at, depth, ...rest } = p;
    const place = [at[0], at[1] - from, at[2]].map(near);
    const numbers = Object.values(rest).map((v) => (typeof v === 'number' ? near(v) : v));
    return JSON.stringify([place, depth === 'through' ? depth : near(depth), numbers]);
  };
  const slots = features.filter(isPocket).map(slot).sort();
  return JSON.stringify([[length, width, rough.thickness, rough.width, rough.length, top].map(near), slots]);
}
