import type { StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../derive/lumber/strip-plan/strip-problem.ts';
import { formatLength, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';

/** Joints are set to these, mm: 1/16 in, 1 mm (common practice, no source). */
const STEP: { readonly [U in UnitSystem]: Mm } = { in: 25.4 / 16, mm: 1 };

/**
 * The widths of the strips of a plan as they are in the finished top, to be drawn and checked with. Kerf and jointing of the
 * cut that opens the glued blank come off beside the center line, the trims off the long edges.
 */
function finishedWidths({ strips }: StripPlan, { width, settings }: StripProblem, units: UnitSystem): Mm[] {
  const opened = settings.seamOnCenterLine ? 0 : settings.kerf / 2 + settings.jointing;
  const step = STEP[units];
  const seams = strips.slice(1).map(({ from }) => Math.round((from - Math.sign(from) * opened) / step) * step);
  const all = [-width / 2, ...seams, width / 2];
  return all.slice(1).map((seam, k) => seam - all[k]!);
}

/** What to write into the design, so that drawings, slots and checks have the joints of the plan. */
export function stripsAsPlanned(plan: StripPlan, problem: StripProblem, units: UnitSystem): string {
  const widths = finishedWidths(plan, problem, units).map((mm) => formatLength(mm, units, 'nearest'));
  return `top.strips=${widths.join(', ')}`;
}
