import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { type Check, type CheckContext, say } from './check.ts';
import { clampLines } from './clamp-line.ts';
import { type GlueUp, glueUps, panelName } from './glued-boards.ts';
import { sayForce, sayStress } from './say-load.ts';
import { clampsByCover, clampsByForce } from './solvers/clamps.ts';
import { type Figure, ours } from './solvers/ours.ts';

/** Opening that a clamp needs beyond panel and cauls, for its screw and head: 4 in. */
const CLAMP_ROOM: Figure<Mm> = ours(101.6, 'common practice, no source');

/** The panels can be clamped with what the shop has: clamps that reach across, enough of them, and a line that closes all joints. */
export const glueUp: Check = {
  name: 'clamps',
  run(context) {
    const panels = glueUps(context.assembly);
    if (panels.length === 0) return [none(context)];
    return panels.flatMap((panel) => [clamps(context, panel), ...clampLines(context, panel)]);
  },
};

interface ClampCounts {
  /** mm that they must open. */
  readonly opening: Mm;
  readonly owned: number;
  readonly byForce: number;
  readonly byCover: number;
}

function clampCounts({ shop }: CheckContext, panel: GlueUp): ClampCounts {
  const { short, medium, long, force, caul } = shop.clamps;
  const opening = panel.width + 2 * caul + CLAMP_ROOM.value;
  const reaching = [short, medium, long].filter((c) => c.reach >= opening - 1e-6);
  const outer = Math.min(panel.boards[0]!.width, panel.boards.at(-1)!.width);
  const { length } = panel;
  const depth = Math.max(...panel.depths);
  return {
    opening,
    owned: reaching.reduce((sum, c) => sum + c.count, 0),
    byForce: clampsByForce({ pressure: shop.gluing.pressure, length, depth, clampForce: force }).clamps,
    byCover: clampsByCover({ length, stave: outer, caul }).clamps,
  };
}

function clamps(context: CheckContext, panel: GlueUp): Finding {
  const { shop } = context;
  const counts = clampCounts(context, panel);
  const { opening, owned, byForce, byCover } = counts;
  const few = owned < byCover;
  const verdict = few ? 'change it' : owned < byForce ? 'look again' : 'ok';
  const depth = say(context, Math.max(...panel.depths));
  return {
    check: glueUp.name,
    verdict,
    part: panel.part.id,
    value: owned,
    limit: few ? byCover : Math.max(byForce, byCover),
    unit: 'clamps',
    because: `${panelName(panel)}: ${owned} of your clamps reach across it and its cauls (they must open ${say(context, opening, 'up')}); ${byCover} is the least, for freshly jointed edges that close by hand, ${byForce} is the handbook's count for a joint ${depth} deep`,
    fixes: verdict === 'ok' ? [] : fixesFor(context, panel, counts),
    source:
      'spacing: Rabiej, Fine Woodworking; pressure: FPL-GTR-190 (second-hand); fewer than cover the joint: our convention',
    assumptions: [
      `${sayForce(context, shop.clamps.force)} a clamp, ${sayStress(context, shop.gluing.pressure)} on the joint, cauls ${say(context, shop.clamps.caul)} deep`,
      `a clamp opens ${say(context, CLAMP_ROOM.value)} more than panel and cauls are wide (${CLAMP_ROOM.source})`,
      'the whole panel is closed at once; glued in stages, the last joint wants the same',
    ],
  };
}

/** Clamps to borrow; or cauls so deep that those at hand cover the joint, if they still reach. */
function fixesFor(context: CheckContext, panel: GlueUp, { opening, owned, byForce, byCover }: ClampCounts): string[] {
  const { shop } = context;
  if (owned >= byCover)
    return [`fit the edges so that ${byCover} clamps close them dry, or borrow ${byForce - owned} more`];
  const missing = byCover - owned;
  const more = `${missing} more ${missing === 1 ? 'clamp that opens' : 'clamps that open'} ${say(context, opening, 'up')}`;
  if (owned < 2) return [more];
  const outer = Math.min(panel.boards[0]!.width, panel.boards.at(-1)!.width);
  const caul = Math.ceil(panel.length / (2 * (owned - 1)) - outer);
  const then = clampCounts({ ...context, shop: { ...shop, clamps: { ...shop.clamps, caul } } }, panel);
  return then.owned >= then.byCover
    ? [more, `cauls ${say(context, caul, 'up')} deep: then ${then.byCover} will do`]
    : [more];
}

const none = ({ assembly }: CheckContext): Finding => ({
  check: glueUp.name,
  verdict: 'ok',
  part: assembly.parts[0]!.id,
  unit: 'clamps',
  because: 'nothing is glued up from boards side by side',
  fixes: [],
  source: 'our convention',
});
