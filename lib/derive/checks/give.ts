import type { Finding } from '../../model/finding.ts';
import {
  atMostVerdict,
  beside,
  type Check,
  type CheckContext,
  called,
  fromMemory,
  notChecked,
  say,
  sayMove,
} from './check.ts';
import { type LeanedTop, type LeaningPlace, leanedTop, leaningPlaces } from './leaned-top.ts';
import { sayForce, sayMass } from './say-load.ts';
import { solvedFixes } from './solve-fix.ts';
import { GRAVITY } from './solvers/mass.ts';
import { deflectionAt } from './solvers/plate/field.ts';
import { GIVE_LIMITS } from './solvers/plate/give.ts';
import { DEFLECTION_GRID } from './solvers/plate/grid.ts';
import { solvePlate } from './solvers/plate/solve.ts';

/**
 * How far the top goes down where someone leans on it. A beam along the table would call it five times stiffer at the
 * edges than it is: the wood bends across its grain there, so the whole top is a plate of two stiffnesses.
 */
export const give: Check = {
  name: 'give',
  run(context) {
    const { top, needs } = leanedTop(context.assembly, DEFLECTION_GRID.value);
    if (!top) return [notChecked('give', context.assembly.parts[0]!.id, needs)];
    return leaningPlaces(top).map((place) => finding(context, top, place));
  },
};

/** The most that any of some spots goes down under someone who leans on it. */
const giveAt = ({ loads }: CheckContext, { plate }: LeanedTop, spots: LeaningPlace['spots']): number =>
  Math.max(...spots.map((at) => deflectionAt(solvePlate(plate, [{ kind: 'point', at, force: loads.lean }]), at)));

function finding(context: CheckContext, top: LeanedTop, { name, spots }: LeaningPlace): Finding {
  const value = giveAt(context, top, spots);
  const { ok, most } = GIVE_LIMITS.value;
  const verdict = atMostVerdict(value, ok, most);
  const part = top.model.top;
  const who = sayMass(context, context.loads.lean / GRAVITY);
  const edge = top.model.thickness(top.model.body.length / 2, top.model.body.width / 2);
  const cause = verdict === 'ok' ? '' : `; the edge is ${say(context, edge)} thick`;
  return {
    check: 'give',
    verdict,
    part: part.id,
    where: name,
    value,
    limit: ok,
    unit: 'mm',
    because: `${called(part)}: ${who} on ${name} moves it ${sayMove(context, value, beside(verdict).value)}; up to ${sayMove(context, ok, beside(verdict).limit)} nobody minds${cause}`,
    fixes:
      verdict === 'ok'
        ? []
        : solvedFixes(
            context,
            {
              measure: (c) => {
                const moved = leanedTop(c.assembly, DEFLECTION_GRID.value).top;
                const place = moved && leaningPlaces(moved).find((p) => p.name === name);
                return moved && place && giveAt(c, moved, place.spots);
              },
              limit: ok,
              want: 'at most',
              levers: ['top.edgeThickness', 'top.thickness', 'bearer.length', 'cleat.length', 'frame.inset'],
              say: (mm) => sayMove(context, mm),
            },
            value,
          ),
    source: GIVE_LIMITS.source,
    load: `${sayForce(context, context.loads.lean)} on ${name}, for a short time`,
    assumptions: ['a thin plate of clear wood, held down along the bearers', ...top.assumptions],
    unconfirmed: fromMemory(part.wood, top.fields),
  };
}
