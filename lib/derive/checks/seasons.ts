import type { Finding } from '../../model/finding.ts';
import { isGlueUp, type Part } from '../../model/part.ts';
import { type Check, type CheckContext, called, fromMemory, sayMove } from './check.ts';
import { cupping } from './cupping.ts';
import { piecesFixedAcross } from './fixed-points.ts';
import { shoulderGaps } from './shoulder-gaps.ts';
import { widthChange } from './solvers/width-change.ts';
import { movementAssumptions, swelling } from './swelling.ts';

/** What the seasons do to the piece: numbers to know, and nothing to change unless it is fixed so that it cannot move. */
export const seasons: Check = {
  name: 'seasons',
  run(context) {
    const found = [
      ...wide(context.assembly.parts).map((part) => width(context, part)),
      ...cupping(context),
      ...shoulderGaps(context),
    ];
    return found.length > 0 ? found : [nothing(context)];
  },
};

/** Wide pieces: glued panels, one of each name, or else tops and seats of one board. */
function wide(parts: readonly Part[]): Part[] {
  const panels = parts.filter((p) => isGlueUp(p) || p.kind === 'seat' || p.kind === 'top');
  return panels.filter((p, k) => panels.findIndex((q) => q.name === p.name) === k);
}

function width(context: CheckContext, part: Part): Finding {
  const { climate } = context.assembly;
  const { low, high } = climate;
  const { perPercent, shrinkage, fields } = swelling(part.wood, climate.sawn);
  const change = widthChange({ width: part.finished.width, perPercent, shrinkage, from: low, to: high });
  const value = change.byCoefficient;
  const other = change.byShrinkage ?? value;
  const held = piecesFixedAcross(context.assembly).find((one) => one.held.id === part.id);
  const fixed = held
    ? `, but ${held.with} of ${called(held.by)} hold it at ${held.count} places and do not let it`
    : '';
  return {
    check: seasons.name,
    verdict: held ? 'change it' : 'ok',
    part: part.id,
    where: 'width',
    value,
    unit: 'mm',
    because: `${called(part)}: from dry winter (${low} %) to damp summer (${high} %) it widens ${sayMove(context, value)}${fixed}`,
    fixes: held ? ['let one place hold and the others travel in slots'] : [],
    source: 'FPL-GTR-190 Eq 13-2; the range goes to Eq 13-3',
    range: [Math.min(value, other), Math.max(value, other)],
    assumptions: movementAssumptions(climate),
    unconfirmed: fromMemory(part.wood, fields),
  };
}

const nothing = ({ assembly }: CheckContext): Finding => ({
  check: seasons.name,
  verdict: 'ok',
  part: assembly.parts[0]!.id,
  unit: 'mm',
  because: 'nothing in it is wide enough to mind the seasons',
  fixes: [],
  source: 'our convention',
});
