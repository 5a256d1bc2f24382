import { type Assembly, partOf, visibleParts } from '../../model/assembly.ts';
import type { Mm } from '../../units/mm.ts';
import type { SpeciesId } from '../../wood/species-id.ts';
import type { ThicknessClassId } from '../../wood/thickness-classes.ts';
import { areaOf } from '../solids/solid.ts';
import { blankOf } from '../solids/solid-of.ts';
import { marksText } from './building-order.ts';
import { type CutList, isFromOffcuts } from './cut-list.ts';

/** Rough lumber of one wood and thickness. */
export interface LumberNeed {
  readonly wood: SpeciesId;
  readonly lumber: ThicknessClassId;
  readonly pieces: number;
  readonly boardFeet: number;
  readonly boardFeetRough: number;
}

export interface TenonNeed {
  readonly wood: SpeciesId;
  readonly quantity: number;
  /** mm each; length along the grain. */
  readonly thickness: Mm;
  readonly width: Mm;
  readonly length: Mm;
  /** mm of milled strip in all, saw cuts not counted. */
  readonly strip: Mm;
}

export interface ScrewNeed {
  readonly gauge: number;
  readonly length: Mm;
  readonly quantity: number;
}

export interface WasherNeed {
  /** mm. */
  readonly diameter: Mm;
  readonly quantity: number;
}

export interface PadNeed {
  readonly quantity: number;
  readonly thickness: Mm;
  readonly width: Mm;
  readonly length: Mm;
}

/** All that must be in the shop to make the piece. */
export interface Bill {
  readonly lumber: readonly LumberNeed[];
  /** Pieces that no lumber is thick enough for, "post P1 to P4": they must be glued up. */
  readonly tooThick: readonly string[];
  readonly tenons: readonly TenonNeed[];
  readonly screws: readonly ScrewNeed[];
  readonly washers: readonly WasherNeed[];
  readonly pads: readonly PadNeed[];
  /** mm² of glued faces and the glue for them in mL, tenons included. */
  readonly glue: { readonly area: number; readonly milliliters: number };
  /** mm² of every face, inside and underside too, and the finish for all coats in liters, spare included. */
  readonly finish: { readonly area: number; readonly coats: number; readonly liters: number };
}

export function bill(assembly: Assembly, list: CutList): Bill {
  const glueArea = jointArea(assembly) + tenonArea(assembly);
  const area = visibleParts(assembly)
    .filter((part) => part.kind !== 'looseTenon')
    .reduce((sum, part) => sum + areaOf(blankOf(part)), 0);
  const { glueSpread, coats, coverage, spare } = assembly.supplies;
  return {
    lumber: lumberNeeds(list),
    tooThick: list.rows.filter((r) => !r.lumber && !isFromOffcuts(r)).map((r) => `${r.name} ${marksText(r.marks)}`),
    tenons: tenonNeeds(list),
    screws: screwNeeds(assembly),
    washers: washerNeeds(assembly),
    pads: list.rows.filter((r) => r.kind === 'pad').map((r) => ({ quantity: r.quantity, ...r.finished })),
    glue: { area: glueArea, milliliters: (glueArea * glueSpread) / 1000 },
    finish: { area, coats, liters: ((area / 1e6) * coats * (1 + spare)) / coverage },
  };
}

/** mm² of the faces that meet in the joints of the piece. */
export const jointArea = (assembly: Assembly): number => assembly.joints.reduce((sum, j) => sum + j.glueArea, 0);

/** mm² of the sides of all loose tenons, as a box: both cheeks and both edges. */
function tenonArea(assembly: Assembly): number {
  const tenons = assembly.joints.flatMap((j) => j.tenons.map((id) => partOf(assembly, id).finished));
  return tenons.reduce((sum, t) => sum + 2 * (t.width + t.thickness) * t.length, 0);
}

function lumberNeeds(list: CutList): LumberNeed[] {
  const needs = new Map<string, LumberNeed>();
  for (const { wood, lumber, quantity, boardFeet, boardFeetRough } of list.rows) {
    if (!lumber) continue;
    const key = `${wood} ${lumber}`;
    const known = needs.get(key) ?? { wood, lumber, pieces: 0, boardFeet: 0, boardFeetRough: 0 };
    needs.set(key, {
      ...known,
      pieces: known.pieces + quantity,
      boardFeet: known.boardFeet + boardFeet,
      boardFeetRough: known.boardFeetRough + boardFeetRough,
    });
  }
  const quarters = (need: LumberNeed): number => Number.parseInt(need.lumber, 10);
  return [...needs.values()].sort((a, b) => (a.wood < b.wood ? -1 : a.wood > b.wood ? 1 : quarters(b) - quarters(a)));
}

function tenonNeeds(list: CutList): TenonNeed[] {
  return list.rows
    .filter((r) => r.kind === 'looseTenon')
    .map((r) => ({ wood: r.wood, quantity: r.quantity, ...r.finished, strip: r.quantity * r.finished.length }));
}

function screwNeeds(assembly: Assembly): ScrewNeed[] {
  const needs = new Map<string, ScrewNeed>();
  for (const { screw } of assembly.fixings) {
    const key = `${screw.gauge} ${screw.length}`;
    const quantity = (needs.get(key)?.quantity ?? 0) + 1;
    needs.set(key, { gauge: screw.gauge, length: screw.length, quantity });
  }
  return [...needs.values()];
}

function washerNeeds(assembly: Assembly): WasherNeed[] {
  const needs = new Map<Mm, number>();
  for (const { washer } of assembly.fixings) needs.set(washer, (needs.get(washer) ?? 0) + 1);
  return [...needs].map(([diameter, quantity]) => ({ diameter, quantity }));
}
