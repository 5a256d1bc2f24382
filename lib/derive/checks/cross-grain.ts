import type { Vec2 } from '../../geometry/vec.ts';
import type { Finding } from '../../model/finding.ts';
import { speciesById } from '../../wood/species-list.ts';
import { atMostVerdict, type Check, type CheckContext, called, fromMemory, notChecked } from './check.ts';
import { type LeanedTop, leanedTop } from './leaned-top.ts';
import { solvedFixes } from './solve-fix.ts';
import { GRAVITY } from './solvers/mass.ts';
import { meanCrossStress } from './solvers/plate/cross-stress.ts';
import { DEFLECTION_GRID, STRESS_GRID } from './solvers/plate/grid.ts';
import { solvePlate } from './solvers/plate/solve.ts';
import { STRESS_BANDS, workingStress } from './solvers/working-stress.ts';

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

/** Greatest mean stress at a bearer end, MPa, with the load on the long edge beside it, on both sides of the table. */
function worstStress(context: CheckContext, top: LeanedTop): { readonly stress: number; readonly bearing: string } {
  const half = top.model.body.width / 2;
  const spots = top.bearings.flatMap((b) =>
    [
      { end: [b.x, b.to] as Vec2, edge: [b.x, half] as Vec2 },
      { end: [b.x, b.from] as Vec2, edge: [b.x, -half] as Vec2 },
    ]
      .filter(({ end, edge }) => Math.abs(end[1] - edge[1]) > 1)
      .map((spot) => ({ ...spot, bearing: b.part })),
  );
  const outer = spots.filter((s) => !spots.some((o) => o.end[0] === s.end[0] && isFurtherOut(o.end, s.end)));
  return outer
    .map(({ end, edge, bearing }) => {
      const field = solvePlate(top.plate, [{ kind: 'point', at: edge, force: context.loads.lean }]);
      return { stress: meanCrossStress(field, end), bearing };
    })
    .reduce((worst, next) => (next.stress > worst.stress ? next : worst), { stress: 0, bearing: top.model.top.id });
}

/**
 * Share of the working stress of a piece that is only tried, by the coarse grid: at a tenth of the work it is off by the
 * same factor as the piece at hand.
 */
function coarsely(context: CheckContext, value: number, limit: number): (moved: CheckContext) => number | undefined {
  const share = (c: CheckContext): number | undefined => {
    const { top } = leanedTop(c.assembly, DEFLECTION_GRID.value);
    return top && worstStress(c, top).stress / limit;
  };
  const factor = value / (share(context) ?? value);
  return (moved) => {
    const coarse = share(moved);
    return coarse === undefined ? undefined : coarse * factor;
  };
}

const isFurtherOut = (a: Vec2, b: Vec2): boolean =>
  Math.sign(a[1]) === Math.sign(b[1]) && Math.abs(a[1]) > Math.abs(b[1]);

function finding(context: CheckContext, top: LeanedTop, strength: number): Finding {
  const limit = workingStress(strength, 'tension across', 'short');
  const { stress } = worstStress(context, top);
  const value = stress / limit;
  const { ok, least } = STRESS_BANDS.value;
  const verdict = atMostVerdict(value, ok, least);
  const part = top.model.top;
  const percent = (share: number): string => `${Math.round(share * 100)} %`;
  return {
    check: crossGrain.name,
    verdict,
    part: part.id,
    value,
    limit: ok,
    unit: 'of the working stress',
    because: `${called(part)}: where a bearer stops, ${Math.round(context.loads.lean / GRAVITY)} kg on the edge beside it pull the wood across its grain to ${percent(value)} of our working limit; up to ${percent(ok)} is well`,
    fixes:
      verdict === 'ok'
        ? []
        : solvedFixes(
            context,
            {
              measure: coarsely(context, value, limit),
              limit: ok,
              want: 'at most',
              levers: ['top.edgeThickness', 'bearer.length', 'panelLeg.width', 'post.spacing'],
              say: percent,
            },
            value,
          ),
    source: STRESS_BANDS.source,
    load: `${context.loads.lean} N on the long edge over a frame, for a short time`,
    assumptions: [
      ...top.assumptions,
      'the mean over 200 mm along the grain at the end of the bearer (our convention)',
      `working limit ${limit.toFixed(2)} MPa from a mean strength of ${strength.toFixed(2)} MPa`,
    ],
    unconfirmed: fromMemory(part.wood, top.fields),
  };
}
