import type { Vec2 } from '../../geometry/vec.ts';
import { partOf } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import type { PartId } from '../../model/part.ts';
import { speciesById } from '../../wood/species-list.ts';
import {
  atMostVerdict,
  beside,
  type Check,
  type CheckContext,
  called,
  fromMemory,
  notChecked,
  say,
  sayShare,
} from './check.ts';
import { type LeanedTop, leanedTop } from './leaned-top.ts';
import { sayForce, sayMass, sayStress } from './say-load.ts';
import { solvedFixes } from './solve-fix.ts';
import { GRAVITY } from './solvers/mass.ts';
import { MEAN_LENGTH, meanCrossStress } from './solvers/plate/cross-stress.ts';
import { DEFLECTION_GRID, type GridCounts, SAME_LINE, STRESS_GRID } from './solvers/plate/grid.ts';
import { solvePlate } from './solvers/plate/solve.ts';
import { STRESS_BANDS, workingStress } from './solvers/working-stress.ts';
import { strengthFromMemory } from './strength-from-memory.ts';

/** How hard the wood is pulled across its grain where a bearer stops and someone leans on the edge over it. */
export const crossGrain: Check = {
  name: 'pull across the grain',
  run(context) {
    const { assembly } = context;
    const first = assembly.parts[0]!.id;
    const { top, needs } = leanedTop(assembly, STRESS_GRID.value);
    if (!top) return [notChecked(crossGrain.name, first, needs, 'of the working stress')];
    const wood = speciesById(top.model.top.wood);
    if (!wood.tensionPerpendicular) {
      return [
        notChecked(
          crossGrain.name,
          top.model.top.id,
          `tension strength across the grain of ${wood.name}`,
          'of the working stress',
        ),
      ];
    }
    return [finding(context, top, wood.tensionPerpendicular.value)];
  },
};

interface Worst {
  /** MPa, the mean beside the end of a bearer. */
  readonly stress: number;
  readonly bearing: PartId;
}

/** The greatest stress where a bearing stops, with the load on the long edge beside it, on both sides of the table. */
function worstStress({ loads }: CheckContext, top: LeanedTop): Worst {
  const half = top.model.body.width / 2;
  const spots = top.bearings.flatMap((b) =>
    [
      { end: [b.x, b.to] as Vec2, edge: [b.x, half] as Vec2 },
      { end: [b.x, b.from] as Vec2, edge: [b.x, -half] as Vec2 },
    ]
      .filter(({ end, edge }) => Math.abs(end[1] - edge[1]) > 1)
      .map((spot) => ({ ...spot, bearing: b.part })),
  );
  return spots
    .filter((s) => !spots.some((o) => isFurtherOut(o.end, s.end)))
    .map(({ end, edge, bearing }) => {
      const field = solvePlate(top.plate, [{ kind: 'point', at: edge, force: loads.lean }]);
      return { stress: meanCrossStress(field, end), bearing };
    })
    .reduce((worst, next) => (next.stress > worst.stress * (1 + SAME) ? next : worst), {
      stress: 0,
      bearing: top.model.top.id,
    });
}

/** Stresses that differ by less than this part are alike. */
const SAME = 1e-6;

/** The same frame, the same side, further out. */
const isFurtherOut = (a: Vec2, b: Vec2): boolean =>
  Math.abs(a[0] - b[0]) < SAME_LINE && Math.sign(a[1]) === Math.sign(b[1]) && Math.abs(a[1]) > Math.abs(b[1]);

/** A piece that is only tried is worked out on the fine grid when the coarse one puts it below the limit, or so little above. */
const NEAR = 0.03;

/**
 * Share of the working stress of a piece that is only tried. Well above the limit the coarse grid will do: at a tenth of
 * the work it is off by about the same factor as the piece at hand.
 */
function tried(
  context: CheckContext,
  value: number,
  stressLimit: number,
  wanted: number,
): (moved: CheckContext) => number | undefined {
  const share = (c: CheckContext, counts: GridCounts): number | undefined => {
    const { top } = leanedTop(c.assembly, counts);
    return top && worstStress(c, top).stress / stressLimit;
  };
  const factor = value / (share(context, DEFLECTION_GRID.value) ?? value);
  return (moved) => {
    const coarse = share(moved, DEFLECTION_GRID.value);
    if (coarse === undefined) return undefined;
    const likely = coarse * factor;
    return likely < wanted * (1 + NEAR) ? share(moved, STRESS_GRID.value) : likely;
  };
}

function finding(context: CheckContext, top: LeanedTop, strength: number): Finding {
  const limit = workingStress(strength, 'tension across', 'short');
  const { stress, bearing } = worstStress(context, top);
  const value = stress / limit;
  const { ok, least } = STRESS_BANDS.value;
  const verdict = atMostVerdict(value, ok, least);
  const part = top.model.top;
  const share = sayShare(value, beside(verdict).value);
  return {
    check: crossGrain.name,
    verdict,
    part: part.id,
    where: bearing,
    value,
    limit: ok,
    unit: 'of the working stress',
    because: `${called(part)}: where ${called(partOf(context.assembly, bearing))} stops, ${sayMass(context, context.loads.lean / GRAVITY)} on the edge beside it pull the wood across its grain to ${share} of our working limit; up to ${sayShare(ok)} is well`,
    fixes:
      verdict === 'ok'
        ? []
        : solvedFixes(
            context,
            {
              measure: tried(context, value, limit, ok),
              limit: ok,
              want: 'at most',
              levers: ['top.edgeThickness', 'bearer.length', 'cleat.length', 'post.spacing'],
              say: (reached) => sayShare(reached),
            },
            value,
          ),
    source: STRESS_BANDS.source,
    load: `${sayForce(context, context.loads.lean)} on the long edge over a frame, for a short time`,
    assumptions: [
      ...top.assumptions,
      `the mean over ${say(context, MEAN_LENGTH.value)} along the grain at the end of the bearer (${MEAN_LENGTH.source})`,
      `working limit ${sayStress(context, limit)} from a mean strength of ${sayStress(context, strength)}`,
    ],
    unconfirmed: [...fromMemory(part.wood, top.fields), ...strengthFromMemory(part.wood, 'tensionPerpendicular')],
  };
}
