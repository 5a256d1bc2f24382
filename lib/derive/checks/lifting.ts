import { partOf, visibleParts } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import { isGlueUp, type PartId } from '../../model/part.ts';
import { density } from '../../wood/density.ts';
import { speciesById } from '../../wood/species-list.ts';
import { type Check, type CheckContext, called } from './check.ts';
import { sayMass, sayPublishedMass } from './say-load.ts';
import { PERSON_LIFT, TEAM_SHARE, teamCapacity } from './solvers/lifting.ts';
import { massOf } from './solvers/mass.ts';
import { tableModel, weigh } from './table-model.ts';

const CHECK = 'lifting';

/** What has to be lifted, against the hands that there are: advice, never more than "look again". */
export const lifting: Check = {
  name: CHECK,
  run: (context) => thingsToLift(context).map((thing) => finding(context, thing)),
};

interface Lifted {
  readonly name: string;
  readonly what: string;
  readonly part: PartId;
  /** kg. */
  readonly mass: number;
}

/** Moisture at which wood is weighed, percent: the reference of the handbook's densities. */
const WEIGHED_AT = 12;

/** The heaviest glue-up as it comes out of the clamps, the top as it is carried in, and the whole. */
function thingsToLift({ assembly }: CheckContext): Lifted[] {
  const parts = visibleParts(assembly).filter((p) => p.kind !== 'looseTenon');
  const whole = { name: 'whole', what: 'the whole piece', part: parts[0]!.id, mass: weigh(assembly, parts).mass };
  const model = tableModel(assembly);
  if (!model) return [whole];
  const { top, topMass } = model;
  const blank = isGlueUp(top) ? top.members.reduce((sum, id) => sum + roughMass(id), 0) : 0;
  function roughMass(id: PartId): number {
    const { rough, wood } = partOf(assembly, id);
    return massOf(rough.length * rough.width * rough.thickness, density(speciesById(wood), WEIGHED_AT).value);
  }
  return [
    ...(blank > 0 ? [{ name: 'glued up', what: `${called(top)} out of the clamps`, part: top.id, mass: blank }] : []),
    { name: 'top', what: called(top), part: top.id, mass: topMass.mass },
    { ...whole, part: top.id },
  ];
}

const capacityOf = (people: number, each: number): number =>
  // From four people on there is no rule: what three lift stays the limit.
  teamCapacity(Array.from({ length: Math.min(people, MOST_PEOPLE) }, () => each)) ?? 0;

const MOST_PEOPLE = Math.max(...Object.keys(TEAM_SHARE.value).map(Number));

function finding(context: CheckContext, { name, what, part, mass }: Lifted): Finding {
  const { people, perPerson } = context.shop.hands;
  const limit = capacityOf(people, perPerson);
  const good = mass <= limit;
  const team =
    people === 1
      ? `one lifts ${sayMass(context, limit, 'down')}`
      : `${people} people lift ${sayMass(context, limit, 'down')} together`;
  return {
    check: CHECK,
    verdict: good ? 'ok' : 'look again',
    part,
    where: name,
    value: mass,
    limit,
    unit: 'kg',
    because: `${what}: ${sayMass(context, mass)}; by the rule for team lifts ${team}`,
    fixes: good ? [] : [helpFor(context, mass, perPerson, name)],
    source: `${TEAM_SHARE.source}; ${sayPublishedMass(context, PERSON_LIFT.value)} a person: ${PERSON_LIFT.source}`,
    assumptions: ['a good grip, a level floor and no steps'],
  };
}

/** How many people it takes, or what to use instead. */
function helpFor(context: CheckContext, mass: number, each: number, name: string): string {
  for (let people = 1; people <= MOST_PEOPLE; people++) {
    const capacity = capacityOf(people, each);
    if (capacity >= mass) return `${people} people lift ${sayMass(context, capacity, 'down')} together`;
  }
  const instead = name === 'whole' ? 'carry it in parts, or use a trolley' : 'slide it on edge, or use a trolley';
  return `${instead}: even ${MOST_PEOPLE} people lift only ${sayMass(context, capacityOf(MOST_PEOPLE, each), 'down')}`;
}
