import { type Assembly, partOf } from '../../model/assembly.ts';
import type { Finding } from '../../model/finding.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { type Check, type CheckContext, called, fromMemory, say } from './check.ts';
import { type SlottedScrew, slottedScrews, tightest } from './slotted-screws.ts';
import { solvedFixes } from './solve-fix.ts';
import { SLOT_PLAY, slotFor } from './solvers/slot.ts';
import { movementAssumptions, swelling } from './swelling.ts';

/** Differences below this are rounding, mm. */
const SAME: Mm = 1e-6;

/** Slots let the screws travel as far as the wood moves between its driest and its dampest, with 1/16 in of play. */
export const slotTravel: Check = {
  name: 'slot travel',
  run(context) {
    const groups = slottedScrews(context.assembly);
    return groups.length > 0 ? groups.map((group) => finding(context, group)) : [none(context.assembly)];
  },
};

function finding(context: CheckContext, group: readonly SlottedScrew[]): Finding {
  const { assembly } = context;
  const worst = tightest(group);
  const { fixing, travel, play } = worst;
  const into = partOf(assembly, fixing.into);
  const needed = slotFor(fixing.screw.shank, travel).length;
  const good = play >= SLOT_PLAY.value - SAME;
  const count = group.length === 1 ? 'the slot is' : `all ${group.length} slots are`;
  const need = `screws ${say(context, fixing.fromCenter)} from the center line need slots ${saySlot(context, needed)} long`;
  return {
    check: slotTravel.name,
    verdict: good ? 'ok' : 'change it',
    part: into.id,
    where: fixing.id,
    value: needed - SLOT_PLAY.value + play,
    limit: needed,
    unit: 'mm',
    because: `${called(into)}: ${need}${good ? `; ${count} long enough` : complaint(context, worst)}`,
    fixes: good ? [] : fixesFor(context, into.name),
    source: `travel by FPL-GTR-190 Eq 13-2; play in the slot: ${SLOT_PLAY.source}`,
    assumptions: movementAssumptions(assembly.climate),
    unconfirmed: fromMemory(into.wood, swelling(into.wood, assembly.climate.sawn).fields),
  };
}

function complaint(context: CheckContext, { slot, play, fixing, travel }: SlottedScrew): string {
  const room = (slot.length - fixing.screw.shank) / 2;
  const shrinks = room - slot.offset - travel.inward;
  const swells = room + slot.offset - travel.outward;
  const place = Math.abs(shrinks - swells) > SAME ? ', off their place' : '';
  const theirs = ` and have ${saySlot(context, slot.length, 'down')}${place}`;
  if (play >= -SAME) return `${theirs}: they leave too little play beyond the travel`;
  return shrinks < -SAME
    ? `${theirs}: in a dry winter they would hold the wood and split it`
    : `${theirs}: in a damp summer they would stop the wood and buckle it`;
}

function fixesFor(context: CheckContext, name: string): string[] {
  return solvedFixes(context, {
    measure({ assembly }) {
      const group = slottedScrews(assembly).find(([first]) => partOf(assembly, first!.fixing.into).name === name);
      return group && tightest(group).play;
    },
    limit: SLOT_PLAY.value - SAME,
    want: 'at least',
    levers: ['fixing.slotMargin'],
    say: (play) => `${saySlot(context, play, 'down')} of play`,
  });
}

/** A slot is cut to a fit: tenths of a mm, or 64ths of an inch. */
export const saySlot = ({ units }: CheckContext, mm: Mm, rounding: 'up' | 'down' = 'up'): string =>
  formatLength(mm, units, rounding);

const none = (assembly: Assembly): Finding => ({
  check: slotTravel.name,
  verdict: 'ok',
  part: assembly.parts[0]!.id,
  unit: 'mm',
  because: 'there are no screws in slots',
  fixes: [],
  source: 'our convention',
});
