import type { Finding } from '../../model/finding.ts';
import { type Check, type CheckContext, called, fromMemory, notChecked } from './check.ts';
import { endLifts } from './end-lifts.ts';
import { byBase, type HoldingScrew, holdingScrews, togetherAllowable } from './holding-screws.ts';
import { sayMass } from './say-load.ts';
import { solvedFixes } from './solve-fix.ts';
import { LEAST_SCREWS_A_FRAME, LIFT_FACTOR } from './solvers/lift-off.ts';
import { GRAVITY, weightOf } from './solvers/mass.ts';
import { ALLOWABLE_WITHDRAWAL_FACTOR } from './solvers/withdrawal.ts';
import { type TableModel, tableModel } from './table-model.ts';

/** The screws hold when the table is lifted by its top, and when someone sits on an end of it. */
export const screwHold: Check = {
  name: 'screw hold',
  run(context) {
    const { assembly } = context;
    const part = assembly.parts[0]!.id;
    if (assembly.fixings.length === 0) return [none(part)];
    const model = tableModel(assembly);
    if (!model) return [notChecked(screwHold.name, part, 'a top of one panel on a base', 'N')];
    const holding = holdingScrews(assembly, model.top.id);
    if (!holding.screws) return [notChecked(screwHold.name, model.top.id, holding.needs, 'N')];
    if (holding.screws.length === 0) return [notChecked(screwHold.name, model.top.id, 'screws into the top', 'N')];
    return [
      ...few(context, model, holding.screws),
      lifted(context, model, holding.screws),
      ...endLifts(context, model),
    ];
  },
};

/** Load on all screws over what they may carry together, when the table is lifted by its top. */
function liftedShare({ assembly, loads }: CheckContext): number | undefined {
  const model = tableModel(assembly);
  const { screws } = model ? holdingScrews(assembly, model.top.id) : {};
  return model && screws && (loads.lift * weightOf(model.baseMass.mass)) / togetherAllowable(screws);
}

function lifted(context: CheckContext, model: TableModel, screws: readonly HoldingScrew[]): Finding {
  const { loads } = context;
  const load = loads.lift * weightOf(model.baseMass.mass);
  const limit = togetherAllowable(screws);
  const good = load <= limit;
  const dead = screws.filter((s) => s.allowable === 0).length;
  const base = `${loads.lift} times the base`;
  return {
    check: screwHold.name,
    verdict: good ? 'ok' : 'change it',
    part: model.top.id,
    where: 'lifted by the top',
    value: load,
    limit,
    unit: 'N',
    because: `${called(model.top)}: lifted by the top, its ${screws.length} screws carry ${sayMass(context, load / GRAVITY, 'up')} (${base}); they may carry ${sayMass(context, limit / GRAVITY, 'down')}${dead > 0 ? `, as ${dead} of them stand in end grain and count for nothing` : ''}`,
    fixes: good
      ? []
      : solvedFixes(context, {
          measure: liftedShare,
          limit: 1,
          want: 'at most',
          levers: ['fixing.penetration', 'fixing.perSide'],
          say: (share) => `them to ${Math.ceil(share * 100)} % of what they may carry`,
        }),
    source: `${ALLOWABLE_WITHDRAWAL_FACTOR.source}; ${LIFT_FACTOR.value} times the base: ${LIFT_FACTOR.source}`,
    load: `lifted by the top with ${base}`,
    assumptions: ['side grain, a proper pilot hole, all screws share the load; specific gravity taken at 12 %'],
    unconfirmed: fromMemory(model.top.wood, ['specificGravity12']),
  };
}

const fewest = (screws: readonly HoldingScrew[]): number =>
  Math.min(...[...byBase(screws).values()].map((own) => own.length));

/** A frame held by fewer than four screws. */
function few(context: CheckContext, { top }: TableModel, screws: readonly HoldingScrew[]): Finding[] {
  const value = fewest(screws);
  const limit = LEAST_SCREWS_A_FRAME.value;
  if (value >= limit) return [];
  return [
    {
      check: 'screws a frame',
      verdict: 'look again',
      part: top.id,
      value,
      limit,
      unit: 'screws',
      because: `${called(top)}: ${value} ${value === 1 ? 'screw holds' : 'screws hold'} it on a frame; ${limit} is the least wanted, so that one may fail`,
      fixes: solvedFixes(context, {
        measure({ assembly }) {
          const { screws: moved } = holdingScrews(assembly, top.id);
          return moved && fewest(moved);
        },
        limit,
        want: 'at least',
        levers: ['fixing.perSide'],
        say: (count) => `${count} screws a frame`,
      }),
      source: LEAST_SCREWS_A_FRAME.source,
    },
  ];
}

const none = (part: string): Finding => ({
  check: screwHold.name,
  verdict: 'ok',
  part,
  unit: 'N',
  because: 'there are no screws to pull out',
  fixes: [],
  source: 'our convention',
});
