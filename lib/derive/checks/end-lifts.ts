import { toOuter } from '../../geometry/frame.ts';
import { partOf } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import type { Mm } from '../../units/mm.ts';
import { type CheckContext, called, fromMemory, notChecked } from './check.ts';
import { holdingScrews, togetherAllowable } from './holding-screws.ts';
import { sayMass } from './say-load.ts';
import { solvedFixes } from './solve-fix.ts';
import { farUplift } from './solvers/lift-off.ts';
import { GRAVITY, weightOf } from './solvers/mass.ts';
import { ALLOWABLE_WITHDRAWAL_FACTOR } from './solvers/withdrawal.ts';
import { type Bearing, type TableModel, tableModel } from './table-model.ts';

const CHECK = 'screw hold';

/** Someone on one end of the top, and what pulls it off the bearer at the other end. */
interface EndLift {
  readonly far: Bearing;
  /** N; negative while the weight of the top keeps it down. */
  readonly uplift: number;
  /** N that the screws of that bearer may carry. */
  readonly limit: number;
  /** mm from the bearer next to the load to the far one. */
  readonly span: Mm;
}

/** Someone on the very end tips the top over the bearer next to him; the far one holds it by its screws. */
export function endLifts(context: CheckContext, model: TableModel): Finding[] {
  const worst = worstLift(context, model);
  const common = { check: CHECK, part: model.top.id, where: 'far bearer', unit: 'N' };
  if (!worst) return [{ ...notChecked(CHECK, model.top.id, 'two bearers that the top is screwed to', 'N'), ...common }];
  const { far, uplift, limit } = worst;
  const person = sayMass(context, context.loads.person);
  const good = uplift <= limit;
  const bearer = called(partOf(context.assembly, far.part));
  const screws = `its screws may carry ${sayMass(context, limit / GRAVITY, 'down')}`;
  return [
    {
      ...common,
      verdict: good ? 'ok' : 'change it',
      value: uplift,
      limit,
      because:
        uplift > 0
          ? `${called(model.top)}: ${person} on the very end lift it off ${bearer} with ${sayMass(context, uplift / GRAVITY, 'up')}; ${screws}`
          : `${called(model.top)}: with ${person} on the very end it still lies on ${bearer} with ${sayMass(context, -uplift / GRAVITY, 'down')}; ${screws}`,
      fixes: good ? [] : fixesFor(context),
      source: ALLOWABLE_WITHDRAWAL_FACTOR.source,
      load: `someone of ${person} on the very end`,
      assumptions: ['the top is stiff and turns over the bearer next to the load'],
      unconfirmed: fromMemory(model.top.wood, ['specificGravity12']),
    },
  ];
}

function worstLift({ assembly, loads }: CheckContext, model: TableModel): EndLift | undefined {
  const ends = [0, model.body.length].map((x) => toOuter(model.frame, [x, 0, 0])[0]);
  const lifts = ends.flatMap((end): EndLift[] => {
    const away = (x: Mm): Mm => Math.abs(x - end);
    const order = [...model.bearings].sort((a, b) => away(a.x) - away(b.x));
    const near = order[0]!;
    const far = order.filter((b) => b.screwed).at(-1);
    const span = far ? away(far.x) - away(near.x) : 0;
    const holding = holdingScrews(assembly, model.top.id);
    if (!far || span < APART || !holding.screws) return [];
    const dead = (weightOf(model.topMass.mass) * (away(model.topMass.center[0]) - away(near.x))) / span;
    const uplift = farUplift(weightOf(loads.person), away(near.x), span, dead);
    return [{ far, uplift, span, limit: togetherAllowable(holding.screws.filter((s) => s.base === far.part)) }];
  });
  const [first, second] = lifts;
  return second && second.uplift - second.limit > first!.uplift - first!.limit + SAME ? second : first;
}

/** Ends that differ by less than this are alike, N. */
const SAME = 1e-6;

/** Bearings nearer to each other than this are one, mm (our convention). */
const APART: Mm = 200;

const fixesFor = (context: CheckContext): string[] =>
  solvedFixes(context, {
    // As a moment: that goes in a straight line with the place of the frames.
    measure(moved) {
      const model = tableModel(moved.assembly);
      const lift = model && worstLift(moved, model);
      return lift && (lift.uplift - lift.limit) * lift.span;
    },
    limit: 0,
    want: 'at most',
    levers: ['frame.inset', 'fixing.penetration', 'fixing.perSide'],
    say: () => 'a pull that its screws may carry',
  });
