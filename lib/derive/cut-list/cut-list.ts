import { type Assembly, pieces } from '../../model/assembly.ts';
import type { Part, PartKind, Size } from '../../model/part.ts';
import { boardFeetNominal } from '../../units/board-feet.ts';
import { classFor } from '../../wood/class-for.ts';
import type { SpeciesId } from '../../wood/species-id.ts';
import { THICKNESS_CLASSES, type ThicknessClass, type ThicknessClassId } from '../../wood/thickness-classes.ts';
import { inBuildingOrder } from './building-order.ts';

/** Pieces of one size, one wood and one treatment. */
export interface CutListRow {
  readonly marks: readonly string[];
  readonly name: string;
  readonly kind: PartKind;
  readonly quantity: number;
  /** mm each. */
  readonly finished: Size;
  /** mm each, what a piece is milled to. */
  readonly rough: Size;
  readonly wood: SpeciesId;
  /** The thinnest rough lumber that gives the rough thickness; absent when none does. */
  readonly lumber?: ThicknessClassId;
  /** Board feet of all pieces by finished width and length and nominal thickness; 0 for pieces cut from offcuts. */
  readonly boardFeet: number;
  /** The same by rough width and length: what is needed on the saw, before any waste. */
  readonly boardFeetRough: number;
  readonly notes: readonly string[];
}

export interface CutList {
  /** In building order. */
  readonly rows: readonly CutListRow[];
  readonly pieces: number;
  readonly boardFeet: number;
  readonly boardFeetRough: number;
}

/** Cut from strips and offcuts of the rest: listed, but no lumber is bought for them. */
const FROM_OFFCUTS: ReadonlySet<PartKind> = new Set(['looseTenon', 'pad']);

export const isFromOffcuts = ({ kind }: Pick<CutListRow, 'kind'>): boolean => FROM_OFFCUTS.has(kind);

/** What a hardwood yard has in the rack; 7/4 is cut to order (common practice, no source). */
export const STOCKED: readonly ThicknessClass[] = THICKNESS_CLASSES.filter((c) => c.id !== '7/4');

/** Sizes are alike when they agree to this many decimals of a mm. */
const ALIKE = 4;

/** Every piece of wood once; pieces that are made alike share a row. */
export function cutList(assembly: Assembly): CutList {
  const groups = new Map<string, Part[]>();
  for (const part of inBuildingOrder(assembly, pieces(assembly))) {
    const key = likeness(part);
    const group = groups.get(key);
    if (group) group.push(part);
    else groups.set(key, [part]);
  }
  const rows = [...groups.values()].map(row);
  return {
    rows,
    pieces: sum(rows.map((r) => r.quantity)),
    boardFeet: sum(rows.map((r) => r.boardFeet)),
    boardFeetRough: sum(rows.map((r) => r.boardFeetRough)),
  };
}

function likeness({ name, kind, wood, finished, rough, notes }: Part): string {
  const sizes = [finished, rough].flatMap((s) => [s.thickness, s.width, s.length]).map((mm) => mm.toFixed(ALIKE));
  return [kind, name, wood, ...sizes, ...notes].join('|');
}

function row(group: readonly Part[]): CutListRow {
  const { name, kind, finished, rough, wood, notes } = group[0]!;
  const lumber = isFromOffcuts({ kind }) ? undefined : classFor(rough.thickness, STOCKED);
  const feet = (size: Size): number =>
    lumber ? boardFeetNominal(lumber.nominal, size.width, size.length) * group.length : 0;
  return {
    marks: group.map((p) => p.mark),
    name,
    kind,
    quantity: group.length,
    finished,
    rough,
    wood,
    ...(lumber ? { lumber: lumber.id } : {}),
    boardFeet: feet(finished),
    boardFeetRough: feet(rough),
    notes,
  };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
