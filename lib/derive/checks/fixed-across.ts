import type { Finding } from '../../model/finding.ts';
import { missing } from '../../wood/confidence.ts';
import { FIELD_LABELS } from '../../wood/field-labels.ts';
import type { SpeciesField } from '../../wood/species.ts';
import { speciesById } from '../../wood/species-list.ts';
import { type Check, type CheckContext, called, fromMemory, notChecked, say } from './check.ts';
import { type FixedAcross, piecesFixedAcross } from './fixed-points.ts';
import { sayStress } from './say-load.ts';
import { saySlot } from './slot-travel.ts';
import { restraintStress } from './solvers/restraint.ts';
import { screwTravel, slotFor } from './solvers/slot.ts';
import { moistureOf, movementAssumptions, stiffnessAcross, swelling } from './swelling.ts';

/** No piece is held at two places across its grain: it could not move with the seasons. */
export const fixedAcross: Check = {
  name: 'fixed across the grain',
  run(context) {
    const worst = new Map<string, FixedAcross>();
    for (const one of piecesFixedAcross(context.assembly)) {
      const known = worst.get(one.held.name);
      if (!known || one.apart > known.apart) worst.set(one.held.name, one);
    }
    return worst.size > 0 ? [...worst.values()].map((one) => finding(context, one)) : [free(context)];
  },
};

function finding(context: CheckContext, one: FixedAcross): Finding {
  const { held } = one;
  const { climate } = context.assembly;
  const species = speciesById(held.wood);
  const { value: stiffness, fields } = stiffnessAcross(species, climate.sawn);
  const needed: SpeciesField[] = [...fields, 'tensionPerpendicular'];
  const lacking = missing(species, needed);
  const fixes = [letTravel(context, one)];
  if (lacking.length > 0) {
    const needs = `${lacking.map((f) => FIELD_LABELS[f]).join(' and ')} of ${species.name}`;
    const open = notChecked(fixedAcross.name, held.id, needs, 'MPa');
    return { ...open, where: one.where[0]!, because: `${open.because}; ${fact(context, one)}`, fixes };
  }
  const { fitting, low, high } = moistureOf(climate);
  const dries = fitting - low >= high - fitting;
  const { perPercent, fields: movement } = swelling(held.wood, climate.sawn);
  const stress = restraintStress(stiffness, perPercent, dries ? fitting - low : high - fitting);
  const { value: limit, source } = species.tensionPerpendicular!;
  const season = dries ? `in a dry winter (${low} %)` : `in a damp summer (${high} %)`;
  const end = dries ? 'it splits' : 'it buckles, and splits when it dries again';
  const breaks = stress > limit;
  return {
    check: fixedAcross.name,
    verdict: breaks ? 'change it' : 'look again',
    part: held.id,
    where: one.where[0]!,
    value: stress,
    limit,
    unit: 'MPa',
    because: `${fact(context, one)}; ${season} that strains it by ${sayStress(context, stress, 1)}, and its wood holds ${sayStress(context, limit, 1)} across the grain${breaks ? `: ${end}` : ''}`,
    fixes,
    source,
    assumptions: [...movementAssumptions(climate), 'nothing gives; in time creep takes part of the stress away'],
    unconfirmed: fromMemory(held.wood, [...needed, ...movement]),
  };
}

const fact = (context: CheckContext, { held, by, apart, count, with: kind }: FixedAcross): string =>
  `${called(held)}: ${count} ${kind} of ${called(by)} hold it at places ${say(context, apart)} apart across its grain`;

/** The slot that the farther place needs when the nearer one holds. */
function letTravel(context: CheckContext, { held, apart, with: kind, where }: FixedAcross): string {
  const { climate, fixings } = context.assembly;
  const screw = fixings.find((f) => where.includes(f.id))?.screw;
  if (kind !== 'screws' || !screw) return 'glue it at one place and let the others travel';
  const { perPercent } = swelling(held.wood, climate.sawn);
  const travel = screwTravel({ distance: apart, perPercent, moisture: moistureOf(climate) });
  return `let one screw hold and the others travel: a slot for ${say(context, apart)} is ${saySlot(context, slotFor(screw.shank, travel).length)} long`;
}

const free = ({ assembly }: CheckContext): Finding => ({
  check: fixedAcross.name,
  verdict: 'ok',
  part: assembly.parts[0]!.id,
  unit: 'MPa',
  because: 'no piece is held at two places across its grain: all can move with the seasons',
  fixes: [],
  source: 'our convention',
});
