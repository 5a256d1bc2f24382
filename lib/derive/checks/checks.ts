import type { Finding } from '../../model/finding.ts';
import type { Check, CheckContext } from './check.ts';
import { crossGrain } from './cross-grain.ts';
import { cutsInStock } from './cuts-in-stock.ts';
import { edgeThickness } from './edge-thickness.ts';
import { fitTogether } from './fit-together.ts';
import { give } from './give.ts';
import { jointStrength } from './joint-strength.ts';
import { lumberThickness } from './lumber-thickness.ts';
import { sag } from './sag.ts';
import { screwCover } from './screw-cover.ts';
import { slotCover } from './slot-cover.ts';
import { sway } from './sway.ts';
import { tenonFit } from './tenon-fit.ts';

/** All checks, in the order in which a maker would ask. */
export const CHECKS: readonly Check[] = [
  fitTogether,
  cutsInStock,
  tenonFit,
  slotCover,
  screwCover,
  edgeThickness,
  sag,
  give,
  crossGrain,
  sway,
  jointStrength,
  lumberThickness,
];

/** What all checks say of a piece, in their order. */
export const runChecks = (context: CheckContext): Finding[] => CHECKS.flatMap((check) => check.run(context));
