import type { Design } from '../../lib/build/design.ts';
import { checkContext } from '../../lib/build/job.ts';
import type { Check, CheckContext } from '../../lib/derive/checks/check.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import type { Feature } from '../../lib/model/feature.ts';
import type { Finding } from '../../lib/model/finding.ts';
import type { PartId } from '../../lib/model/part.ts';
import type { LoadsGiven } from '../../lib/shop/loads.ts';
import { defineShop, type Shop } from '../../lib/shop/shop.ts';
import type { UnitSystem } from '../../lib/units/format-length.ts';
import { type Changes, DESIGNS, type DesignName, valuesOf } from '../written.ts';
import { changeOf } from './site-context.ts';

/** What a design is checked against; the rest is as usual. */
export interface Against {
  readonly loads?: LoadsGiven;
  readonly shop?: Shop;
  readonly units?: UnitSystem;
}

/** A design with some parameters changed, under other loads or in another shop. */
export function tried(name: DesignName, changes: Changes = {}, against: Against = {}): CheckContext {
  const { shop = defineShop(), ...own } = against;
  // biome-ignore lint/suspicious/noExplicitAny: designs of any parameters
  const design: Design<any> = { ...DESIGNS[name], ...own };
  const values = valuesOf(design, changes);
  return checkContext(design, values, design.compose(values, design.title), shop);
}

/** The same without parameters to move: no fixes are sought, which takes the most time. */
export const untuned = ({ tune: _, ...context }: CheckContext): CheckContext => context;

/** What a check says of a piece once one of its own fixes is applied. */
export const afterFix = (
  check: Check,
  fix: string | undefined,
  name: DesignName,
  changes: Changes,
  against?: Against,
) => check.run(tried(name, { ...changes, ...changeOf(fix) }, against));

/** The finding of a check under one name and place. */
export function at(findings: readonly Finding[], check: string, where?: string): Finding {
  const [found, ...more] = findings.filter((f) => f.check === check && (where === undefined || f.where === where));
  if (!found || more.length > 0)
    throw new Error(`${check} ${where ?? ''} is found ${more.length + (found ? 1 : 0)} times`);
  return found;
}

/** The same piece with some features of its parts changed. */
export const refitted = (assembly: Assembly, change: (feature: Feature, part: PartId) => Feature): Assembly => ({
  ...assembly,
  parts: assembly.parts.map((part) => ({ ...part, features: part.features.map((f) => change(f, part.id)) })),
});

/**
 * The reading-room table as the check values have it: base without profiles and hollows, pads of 1 mm whose middles stand
 * 25.4 mm from the ends of the feet, cross rails of 38.1 mm, 25 mm of thread.
 */
export const GOLDEN: Changes = {
  'pad.length': '1 in',
  'pad.fromEnds': '1/2 in',
  'pad.thickness': '1 mm',
  'foot.archRise': '0 in',
  'lowerRail.thickness': '1 1/2 in',
  'frameJoint.tenonDepth': '1 1/4 in',
  'bearer.reliefDepth': '0 in',
  'bearer.endRound': '0 in',
  'top.showEdge': 'square',
  'top.undersideEdge': 'square',
  'fixing.penetration': '25 mm',
};

/** Masses differ by less than this share: feet are 1 mm lower but for their pads, a stretcher follows its frames. */
export const LIGHTER = 0.004;
