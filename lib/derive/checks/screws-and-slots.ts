import { toInner, toOuter, turnIn, turnOut } from '../../geometry/frame.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import { isPocket } from '../../model/feature.ts';
import type { Finding } from '../../model/finding.ts';
import { isGlueUp, type Part } from '../../model/part.ts';
import { type Convex, movedBy, separation } from '../solids/convex.ts';
import { pocketBody } from '../solids/pocket-fit.ts';
import { blankOf } from '../solids/solid-of.ts';
import { type Check, type CheckContext, called, say } from './check.ts';
import { LEAST_WALL } from './cuts-in-stock.ts';
import { solvedFixes } from './solve-fix.ts';

/** A cut in a glued panel and the slot of a joint inside it that lies nearest. */
interface Nearest {
  readonly cut: string;
  readonly slot: string;
  readonly member: Part;
  /** mm of wood between them; negative by the depth of the overlap. */
  readonly gap: number;
}

/**
 * Holes and mortises that are cut into a glued panel keep clear of the slots inside it, which were cut into its pieces
 * before gluing: a screw must not run into a loose tenon.
 */
export const screwsAndSlots: Check = {
  name: 'screws and slots',
  run(context) {
    const { assembly } = context;
    return assembly.parts.filter(isGlueUp).flatMap((panel): Finding[] => {
      const nearest = nearestSlot(assembly, panel);
      return nearest ? [finding(context, panel, nearest)] : [];
    });
  },
};

/** Slots further away than this are not measured, mm. */
const NEAR = 25;

interface Body {
  readonly id: string;
  readonly member: Part;
  readonly convex: Convex;
}

/** The closest pair of a cut in the panel and a slot in one of its members; undefined when it has no such pair. */
function nearestSlot(assembly: Assembly, panel: Part & { readonly members: readonly string[] }): Nearest | undefined {
  const cuts = bodies(assembly, panel, panel);
  const slots = panel.members.flatMap((id) => bodies(assembly, partOf(assembly, id), panel));
  if (cuts.length === 0 || slots.length === 0) return undefined;
  return cuts
    .flatMap((cut) =>
      slots.map(({ id, member, convex }): Nearest => {
        const gap = Math.min(separation(cut.convex, convex, NEAR), NEAR);
        return { cut: cut.id, slot: id, member, gap };
      }),
    )
    .reduce((least, next) => (next.gap < least.gap ? next : least));
}

/** The pockets of a part as bodies in the frame of the panel. */
function bodies(assembly: Assembly, part: Part, panel: Part): Body[] {
  const pockets = part.features.filter(isPocket);
  if (pockets.length === 0) return [];
  const solid = blankOf(part);
  const [from, to] = [placeOf(assembly, part.id), placeOf(assembly, panel.id)];
  return pockets.map((pocket) => ({
    id: pocket.id,
    member: part,
    convex: movedBy(
      pocketBody(pocket, solid),
      (p) => toInner(to, toOuter(from, p)),
      (d) => turnIn(to, turnOut(from, d)),
    ),
  }));
}

function finding(context: CheckContext, panel: Part, { cut, slot, member, gap }: Nearest): Finding {
  const verdict = gap <= 0 ? 'change it' : gap < LEAST_WALL - 1e-6 ? 'look again' : 'ok';
  const between = gap <= 0 ? `runs ${say(context, -gap, 'up')} into` : `keeps ${gap >= NEAR ? 'well ' : ''}clear of`;
  const room = gap <= 0 || gap >= NEAR ? '' : ` by ${say(context, gap, 'down')}`;
  return {
    check: screwsAndSlots.name,
    verdict,
    part: panel.id,
    where: cut,
    value: gap,
    limit: LEAST_WALL,
    unit: 'mm',
    because: `${called(panel)}: cut ${cut} ${between} slot ${slot} in ${called(member)}${room}; ${say(context, LEAST_WALL, 'up')} of wood is wanted between them`,
    fixes:
      verdict === 'ok'
        ? []
        : solvedFixes(
            context,
            {
              measure: ({ assembly }) => {
                const moved = assembly.parts.filter(isGlueUp).find((p) => p.id === panel.id);
                return moved && nearestSlot(assembly, moved)?.gap;
              },
              limit: LEAST_WALL,
              want: 'at least',
              levers: ['edgeJoint.first', 'fixing.fromEnds', 'frame.inset', 'fixing.penetration', 'edgeJoint.gauge'],
              say: (mm) => `${say(context, mm, 'down')} between them`,
            },
            gap,
          ),
    source: 'our convention',
  };
}
