import type { SetHeading, SheetPlan } from '../../../drawing/sheet.ts';
import type { Assembly } from '../../../model/assembly.ts';
import type { PartId } from '../../../model/part.ts';
import type { Site } from '../../../shop/site.ts';
import type { UnitSystem } from '../../../units/format-length.ts';
import type { Shape } from '../../solids/shapes.ts';

/** What the sheets of a piece are drawn from. */
export interface SheetSource {
  /** As it is built: fitted to the underside as measured, where it was. */
  readonly assembly: Assembly;
  /** As it was designed and agreed. */
  readonly nominal: Assembly;
  /** The day on which the underside was measured, YYYY-MM-DD; absent when it was not. */
  readonly measured?: string;
  /** Of the piece as it is built. */
  readonly shapes: ReadonlyMap<PartId, Shape>;
  readonly site: Site;
  /** What the design speaks; lengths on sheets follow the heading. */
  readonly units: UnitSystem;
  /** The finish in words; empty when nobody has said. */
  readonly finish: string;
}

/** Makes the plans of one kind of sheet; none when the piece has nothing to show there. */
export type SheetMaker = (source: SheetSource, heading: SetHeading) => readonly SheetPlan[];
