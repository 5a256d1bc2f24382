import { type Frame, within } from '../geometry/frame.ts';
import { heightAt } from '../geometry/surface.ts';
import type { PlacedPart } from '../model/assembly.ts';
import type { PanelBody } from '../model/body.ts';
import type { Joined } from '../model/composition.ts';
import type { Mm } from '../units/mm.ts';
import type { SpeciesId } from '../wood/species-id.ts';
import { looseTenonJoint, plainJoint, type TenonSize } from './loose-tenon-joint.ts';

export interface EdgeJointOptions {
  readonly id: string;
  /** The two strips, the one nearer to the left edge of the table first; both stand in the frame of the panel. */
  readonly between: readonly [PlacedPart, PlacedPart];
  readonly panel: PanelBody;
  /** mm from the center line, in the frame of the panel. */
  readonly at: Mm;
  /** Tenons of the joint; absent for a plain glued joint. */
  readonly tenons?: {
    readonly size: TenonSize;
    /** mm from the show face to the middle of the tenon. */
    readonly gauge: Mm;
    /** mm from the reference end to the middle of each tenon. */
    readonly stations: readonly Mm[];
    readonly mark: (n: number) => string;
  };
  readonly wood: SpeciesId;
  /** mm, the stretch of depth that this joint glues; default from the show face to the underside. */
  readonly depth?: { readonly top: Mm; readonly bottom?: Mm };
}

/**
 * Two strips glued edge to edge. Tenons are gauged from the show face, so that the taper never moves them; the strip
 * nearer to the left edge has the tight slots.
 */
export function edgeJoint(options: EdgeJointOptions): Joined {
  const { id, between, panel, at, tenons, wood, depth } = options;
  const thickness = heightAt(panel.underside, panel.length / 2, at);
  const glueArea = panel.length * (Math.min(depth?.bottom ?? thickness, thickness) - (depth?.top ?? 0));
  if (!tenons) return plainJoint(id, 'edge', between, glueArea);
  const frame = between[0].frame;
  const spots = tenons.stations.map(
    (x): Frame => within(frame, { origin: [x, at, tenons.gauge], x: [0, 1, 0], y: [1, 0, 0] }),
  );
  return looseTenonJoint({ id, kind: 'edge', between, spots, tenon: tenons.size, wood, mark: tenons.mark, glueArea });
}

/** Middles of evenly spaced tenons: the first and last `first` from the ends, no two further apart than `spacing`, mm. */
export function tenonStations(length: Mm, first: Mm, spacing: Mm): Mm[] {
  const room = length - 2 * first;
  if (room < 0) throw new RangeError(`two tenons ${first} mm from the ends do not fit a joint ${length} mm long`);
  const gaps = Math.max(1, Math.ceil(room / spacing - 1e-9));
  return Array.from({ length: gaps + 1 }, (_, k) => first + (room * k) / gaps);
}
