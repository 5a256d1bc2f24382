import { toOuter, turnOut } from '../../geometry/frame.ts';
import { heightAt } from '../../geometry/surface.ts';
import type { Vec3 } from '../../geometry/vec.ts';
import { screwFixing } from '../../joints/screw-fixing.ts';
import { seasonalTravel } from '../../joints/seasonal-travel.ts';
import type { PlacedPart } from '../../model/assembly.ts';
import type { Screw } from '../../model/joint.ts';
import type { Mm } from '../../units/mm.ts';
import { leadHole, type ScrewGauge, shankDiameter } from '../../wood/screws.ts';
import type { SpeciesId } from '../../wood/species-id.ts';
import { speciesById } from '../../wood/species-list.ts';
import type { FrameContext } from './base-context.ts';
import type { TrestleValues } from './values.ts';

/** The piece the screws go through: bearer, cleat or upper rail. */
export interface Carrier {
  readonly base: PlacedPart;
  /** mm, half its length; its lower edge over the floor; its middle from the middle of the frame. */
  readonly half: Mm;
  readonly up: Mm;
  readonly inwards: Mm;
}

/** Screws from below into the top: the middle one holds, the others travel in slots as the top moves with the seasons. */
export function fixTop(context: FrameContext, at: Carrier): void {
  const { values: v, c, name } = context;
  const up = turnOut(context.elevation, [0, 1, 0]);
  for (const [k, across] of offsets(v, at.half).entries()) {
    const point = toOuter(context.elevation, [across, at.up, at.inwards]);
    const through = heightAt(context.underside, point[0], point[1]) - at.up;
    c.fix(
      screwFixing({
        id: `frame-${name}/fixing-${k + 1}`,
        base: at.base,
        into: context.top,
        at: point,
        direction: up,
        through,
        ...screwOf(v, v.top.wood),
        penetration: v.fixing.penetration,
        fromCenter: Math.abs(across),
        cut: `${name}-fixing-${k + 1}`,
        ...travelAt(context, across, v.top.wood),
      }),
    );
  }
}

/** Distance from the screw in the middle of a cleat that goes into the leg to the one that goes into the top, mm. */
export const BESIDE_CENTER = 25;

/** Screws from the cleat into the panel leg, between those into the top; the leg swells across as the top does. */
export function fixCleat(context: FrameContext, at: Carrier, leg: PlacedPart, up: Mm): void {
  const { values: v, c, name } = context;
  const inner = at.inwards + v.cleat.thickness / 2;
  const places = offsets(v, at.half);
  const between = places.slice(1).map((p, k) => (p + places[k]!) / 2);
  const middle = between.length / 2;
  const all = [...between.slice(0, middle - 1), BESIDE_CENTER, ...between.slice(middle + 1)];
  for (const [k, across] of all.entries()) {
    c.fix(
      screwFixing({
        id: `frame-${name}/cleat-fixing-${k + 1}`,
        base: at.base,
        into: leg,
        at: toOuter(context.elevation, [across, up, inner]),
        direction: turnOut(context.elevation, [0, 0, -1]),
        through: v.cleat.thickness,
        ...screwOf(v, v.frame.wood),
        penetration: Math.min(v.fixing.penetration, v.panelLeg.thickness / 2),
        fromCenter: across === BESIDE_CENTER ? 0 : Math.abs(across),
        cut: `cleat-fixing-${k + 1}`,
        ...(across === BESIDE_CENTER ? {} : travelAt(context, across, v.frame.wood)),
      }),
    );
  }
}

function offsets(v: TrestleValues, half: Mm): Mm[] {
  const last = half - v.fixing.fromEnds;
  const n = v.fixing.perSide;
  return Array.from({ length: 2 * n + 1 }, (_, k) => ((k - n) * last) / n);
}

function screwOf(v: TrestleValues, wood: SpeciesId): { screw: Screw; washer: Mm; pilot: Mm } {
  const gauge = Number(v.fixing.gauge) as ScrewGauge;
  const shank = shankDiameter(gauge);
  return {
    screw: { gauge, shank, length: v.fixing.screwLength },
    washer: v.fixing.washer,
    pilot: leadHole(shank, speciesById(wood).kind),
  };
}

function travelAt(
  { values: v, elevation }: FrameContext,
  across: Mm,
  wood: SpeciesId,
): { travel?: { outward: Mm; inward: Mm; margin: Mm; along: Vec3 } } {
  if (across === 0) return {};
  const { outward, inward } = seasonalTravel(wood, Math.abs(across), v.moisture);
  return {
    travel: {
      outward,
      inward,
      margin: v.fixing.slotMargin,
      along: turnOut(elevation, [Math.sign(across), 0, 0]),
    },
  };
}
