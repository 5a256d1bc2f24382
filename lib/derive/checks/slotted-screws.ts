import { toOuter, turnOut } from '../../geometry/frame.ts';
import { dot, sub, type Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import type { Bore, SlottedHole } from '../../model/feature.ts';
import type { Fixing } from '../../model/joint.ts';
import type { Mm } from '../../units/mm.ts';
import { type Slot, screwTravel, slotSlack, type Travel } from './solvers/slot.ts';
import { moistureOf, swelling } from './swelling.ts';

/** A screw in its slot: what the slot is, and what the seasons ask of it. */
export interface SlottedScrew {
  readonly fixing: Fixing;
  readonly travel: Travel;
  readonly slot: Slot;
  /** mm beyond shank and travel, twice what the tighter end has; negative when the slot stops the screw. */
  readonly play: Mm;
}

/** Differences below this are rounding, mm. */
const SAME: Mm = 1e-6;

/** The screws in slots, by the name of the piece that moves: legs alike come in one group. */
export function slottedScrews(assembly: Assembly): SlottedScrew[][] {
  const groups = new Map<string, SlottedScrew[]>();
  for (const fixing of assembly.fixings.filter((f) => f.hold === 'slotted')) {
    const { name } = partOf(assembly, fixing.into);
    groups.set(name, [...(groups.get(name) ?? []), measured(assembly, fixing)]);
  }
  return [...groups.values()];
}

/** The screw with the least play; of screws alike the one farthest out. */
export const tightest = (screws: readonly SlottedScrew[]): SlottedScrew =>
  screws.reduce((worst, next) => {
    if (next.play < worst.play - SAME) return next;
    return next.play < worst.play + SAME && next.fixing.fromCenter > worst.fixing.fromCenter + SAME ? next : worst;
  });

function measured(assembly: Assembly, fixing: Fixing): SlottedScrew {
  const { climate } = assembly;
  const { perPercent } = swelling(partOf(assembly, fixing.into).wood, climate.sawn);
  const travel = screwTravel({ distance: fixing.fromCenter, perPercent, moisture: moistureOf(climate) });
  const slot = slotAt(assembly, fixing);
  return { fixing, travel, slot, play: 2 * slotSlack(slot, fixing.screw.shank, travel) };
}

/** The hole in the base: its length, and how far its middle lies off the screw, away from what stays put. */
function slotAt(assembly: Assembly, fixing: Fixing): Slot {
  const hole = partOf(assembly, fixing.base).features.find(
    (f): f is SlottedHole | Bore => (f.kind === 'slottedHole' || f.kind === 'bore') && f.id === fixing.baseFeature,
  )!;
  if (hole.kind === 'bore') return { length: hole.diameter, offset: 0 };
  const frame = placeOf(assembly, fixing.base);
  const along = turnOut(frame, hole.along);
  const screw = pilotAt(assembly, fixing);
  const off = dot(sub(toOuter(frame, hole.at), screw), along);
  const held = assembly.fixings.find((f) => f.hold === 'fixed' && f.base === fixing.base && f.into === fixing.into);
  // A slot says its line, not which end of it is outward: the screw that holds tells.
  const inward = held !== undefined && dot(sub(screw, pilotAt(assembly, held)), along) < 0;
  return { length: hole.length, offset: inward ? -off : off };
}

function pilotAt(assembly: Assembly, { into, pilotFeature }: Fixing): Vec3 {
  const pilot = partOf(assembly, into).features.find((f): f is Bore => f.kind === 'bore' && f.id === pilotFeature)!;
  return toOuter(placeOf(assembly, into), pilot.at);
}
