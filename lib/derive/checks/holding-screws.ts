import { type Assembly, partOf } from '../../model/assembly.ts';
import type { Bore } from '../../model/feature.ts';
import type { Fixing } from '../../model/joint.ts';
import type { Part, PartId } from '../../model/part.ts';
import { FIELD_LABELS } from '../../wood/field-labels.ts';
import { speciesById } from '../../wood/species-list.ts';
import { screwHold } from './solvers/withdrawal.ts';

/** A screw that holds a piece, and what it may carry along its axis. */
export interface HoldingScrew {
  readonly fixing: Fixing;
  readonly base: PartId;
  /** N; 0 in end grain, where nothing is counted on. */
  readonly allowable: number;
}

export type HoldingScrews =
  | { readonly screws: readonly HoldingScrew[]; readonly endGrain: number; readonly needs?: never }
  | { readonly needs: string; readonly screws?: never };

/** A screw that runs along the grain by more than this (cosine of the angle to it) stands in end grain (our convention). */
const END_GRAIN = 0.5;

/** The screws into a piece; what is missing when its wood has no printed specific gravity. */
export function holdingScrews(assembly: Assembly, into: PartId): HoldingScrews {
  const part = partOf(assembly, into);
  const species = speciesById(part.wood);
  const gravity = species.specificGravity12?.value;
  if (gravity === undefined) return { needs: `${FIELD_LABELS.specificGravity12} of ${species.name}` };
  const fixings = assembly.fixings.filter((f) => f.into === into);
  const screws = fixings.map((fixing): HoldingScrew => {
    const { screw, penetration: thread, base } = fixing;
    const { allowable } = screwHold({ specificGravity12: gravity, shank: screw.shank, thread });
    return { fixing, base, allowable: inEndGrain(part, fixing) ? 0 : allowable };
  });
  return { screws, endGrain: screws.filter((s) => s.allowable === 0).length };
}

const inEndGrain = (part: Part, { pilotFeature }: Fixing): boolean => {
  const pilot = part.features.find((f): f is Bore => f.kind === 'bore' && f.id === pilotFeature)!;
  return Math.abs(pilot.into[0]) > END_GRAIN;
};

/** N that all of them may carry together. */
export const togetherAllowable = (screws: readonly HoldingScrew[]): number =>
  screws.reduce((sum, { allowable }) => sum + allowable, 0);

/** The screws of each base piece, by its id. */
export function byBase(screws: readonly HoldingScrew[]): Map<PartId, HoldingScrew[]> {
  const bases = new Map<PartId, HoldingScrew[]>();
  for (const screw of screws) bases.set(screw.base, [...(bases.get(screw.base) ?? []), screw]);
  return bases;
}
