import { add, dot, scale, sub, type Vec3 } from '../../geometry/vec.ts';
import { type Assembly, partOf } from '../../model/assembly.ts';
import type { Bore } from '../../model/feature.ts';
import type { Finding } from '../../model/finding.ts';
import type { Fixing } from '../../model/joint.ts';
import type { Part } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { boundsOf } from '../solids/solid.ts';
import { blankOf } from '../solids/solid-of.ts';
import { atLeastVerdict, type Check, type CheckContext, called, say } from './check.ts';
import { LEAST_THREAD, SCREW_COVER } from './solvers/thread-room.ts';

/** Least wood between the point of a screw and the face behind it, mm. */
const COVER: Mm = SCREW_COVER.value;

/** Every screw: wood left between its point and the far face, and thread enough to hold. */
export const screwCover: Check = {
  name: 'screw cover',
  run(context) {
    const findings = context.assembly.fixings.flatMap((fixing) => [cover(context, fixing), thread(context, fixing)]);
    return findings.length > 0 ? findings : [none(context.assembly)];
  },
};

/** mm of wood straight ahead of a pilot hole, to the far side of the part. */
function woodAhead(part: Part, pilot: Bore): Mm {
  const depth = pilot.depth === 'through' ? 0 : pilot.depth;
  const end: Vec3 = add(pilot.at, scale(pilot.into, depth));
  const solid = blankOf(part);
  let nearest = Infinity;
  for (const f of solid.faces) {
    const slope = dot(f.normal, pilot.into);
    if (slope < 1e-9) continue;
    nearest = Math.min(nearest, dot(f.normal, sub(solid.vertices[f.loops[0]![0]!]!, end)) / slope);
  }
  return Number.isFinite(nearest) ? nearest : boundsOf(solid.vertices).max[2];
}

/** Which screw, so that one finds it: that on the line that stays put, or how far from it. */
const which = (context: CheckContext, { hold, fromCenter }: Fixing): string =>
  hold === 'fixed' ? 'the fixed screw' : `a screw ${say(context, fromCenter)} from the center line`;

function cover(context: CheckContext, fixing: Fixing): Finding {
  const { assembly } = context;
  const into = partOf(assembly, fixing.into);
  const pilot = into.features.find((f): f is Bore => f.kind === 'bore' && f.id === fixing.pilotFeature)!;
  const value = woodAhead(into, pilot);
  const verdict = atLeastVerdict(value, COVER, COVER / 2);
  return {
    check: screwCover.name,
    verdict,
    part: into.id,
    where: fixing.id,
    value,
    limit: COVER,
    unit: 'mm',
    because: `${called(into)}: ${value < 0 ? `${which(context, fixing)} comes through by ${say(context, -value, 'up')}` : `${say(context, value, 'down')} of wood stays ahead of ${which(context, fixing)}`}; ${say(context, COVER, 'up')} is wanted`,
    fixes: verdict === 'ok' ? [] : [shallower(context, fixing.penetration - (COVER - value))],
    source: 'common practice, no source',
  };
}

const shallower = (context: CheckContext, reach: Mm): string =>
  reach > 0 ? `let it reach ${say(context, reach, 'down')} into the wood` : 'move it to where the wood is thicker';

function thread(context: CheckContext, fixing: Fixing): Finding {
  const into = partOf(context.assembly, fixing.into);
  const limit = LEAST_THREAD.value * fixing.screw.shank;
  const verdict = fixing.penetration >= limit - 1e-6 ? 'ok' : 'look again';
  return {
    check: 'screw thread',
    verdict,
    part: into.id,
    where: fixing.id,
    value: fixing.penetration,
    limit,
    unit: 'mm',
    because: `${called(into)}: ${say(context, fixing.penetration, 'down')} of thread hold ${which(context, fixing)}; ${say(context, limit, 'up')} is wanted`,
    fixes:
      verdict === 'ok'
        ? []
        : [`let it reach ${say(context, limit, 'up')} into the wood, by a longer screw or a deeper counterbore`],
    source: 'our convention',
  };
}

const none = (assembly: Assembly): Finding => ({
  check: screwCover.name,
  verdict: 'ok',
  part: assembly.parts[0]!.id,
  unit: 'mm',
  because: 'there are no screws',
  fixes: [],
  source: 'our convention',
});
