import type { Finding } from '../../model/finding.ts';
import { access } from './access.ts';
import type { Check, CheckContext } from './check.ts';
import { crossGrain } from './cross-grain.ts';
import { cutsInStock } from './cuts-in-stock.ts';
import { edgeThickness } from './edge-thickness.ts';
import { fitTogether } from './fit-together.ts';
import { fixedAcross } from './fixed-across.ts';
import { give } from './give.ts';
import { glueUp } from './glue-up.ts';
import { jointStrength } from './joint-strength.ts';
import { lifting } from './lifting.ts';
import { lumberThickness } from './lumber-thickness.ts';
import { measuredBoards } from './measured-boards.ts';
import { measuredUnderside } from './measured-underside.ts';
import { route } from './route.ts';
import { sag } from './sag.ts';
import { screwCover } from './screw-cover.ts';
import { screwHold } from './screw-hold.ts';
import { screwsAndSlots } from './screws-and-slots.ts';
import { seasons } from './seasons.ts';
import { shopLimits } from './shop-limits.ts';
import { slotCover } from './slot-cover.ts';
import { slotTravel } from './slot-travel.ts';
import { sway } from './sway.ts';
import { tenonFit } from './tenon-fit.ts';
import { tipping } from './tipping.ts';

/** All checks, in the order in which a maker would ask. */
export const CHECKS: readonly Check[] = [
  measuredBoards,
  measuredUnderside,
  fitTogether,
  cutsInStock,
  tenonFit,
  slotCover,
  screwsAndSlots,
  screwCover,
  slotTravel,
  fixedAcross,
  screwHold,
  edgeThickness,
  sag,
  give,
  crossGrain,
  sway,
  jointStrength,
  tipping,
  seasons,
  glueUp,
  lifting,
  lumberThickness,
  shopLimits,
  access,
  route,
];

/** What all checks say of a piece, in their order. */
export const runChecks = (context: CheckContext): Finding[] => CHECKS.flatMap((check) => check.run(context));
