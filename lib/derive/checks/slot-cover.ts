import { heightAt } from '../../geometry/surface.ts';
import { add, scale } from '../../geometry/vec.ts';
import type { SliceBody } from '../../model/body.ts';
import type { Mortise } from '../../model/feature.ts';
import type { Finding } from '../../model/finding.ts';
import { isGlueUp, type Part } from '../../model/part.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { pocketSection } from '../solids/pocket-section.ts';
import { atLeastVerdict, type Check, type CheckContext, called, say } from './check.ts';

/** Least wood between a slot and the finished underside: 1/4 in, common practice, no source. */
export const UNDERSIDE_COVER: Mm = 6.35;

/** Least wood between a slot and the show face: 3/8 in, common practice, no source. */
export const SHOW_COVER: Mm = 9.525;

/** What cleaning up after the taper may still take off: 1/32 in, common practice, no source. */
export const CLEAN_UP: Mm = 0.79375;

/** Least and wanted: below half of the wanted cover it must be changed (our convention). */
const LEAST = 0.5;

/**
 * Wood over and under every loose-tenon slot of the top once the underside has been tapered and cleaned up:
 *
 *     cover = t(|x| + p) - (d + a/2) - c
 *
 * with t the thickness at the far end of the slot, p its depth, d the gauge, a its thickness and c the clean-up.
 */
export const slotCover: Check = {
  name: 'slot cover',
  run(context) {
    const strips = context.assembly.parts.filter((p) => p.body.kind === 'slice' && !isGlueUp(p));
    const findings = strips.flatMap((part) => {
      const slots = part.features.filter((f): f is Mortise => f.kind === 'mortise');
      return slots.length > 0 ? [underside(context, part, slots), showFace(context, part, slots)] : [];
    });
    return findings.length > 0 ? findings : [nothing(context)];
  },
};

/** Vertical distance from a slot down to the finished underside, mm, over all corners of the slot. */
function coverBelow(body: SliceBody, slot: Mortise): Mm {
  const ring = pocketSection(slot);
  const corners = [...ring, ...ring.map((p) => add(p, scale(slot.into, slot.depth)))];
  return Math.min(...corners.map((p) => heightAt(body.of.underside, p[0], p[1]) - p[2])) - CLEAN_UP;
}

function worstOf(slots: readonly Mortise[], cover: (slot: Mortise) => Mm): { slot: Mortise; value: Mm } {
  return slots
    .map((slot) => ({ slot, value: cover(slot) }))
    .reduce((worst, next) => (next.value < worst.value ? next : worst));
}

function underside(context: CheckContext, part: Part, slots: readonly Mortise[]): Finding {
  const { slot, value } = worstOf(slots, (s) => coverBelow(part.body as SliceBody, s));
  const verdict = atLeastVerdict(value, UNDERSIDE_COVER, UNDERSIDE_COVER * LEAST);
  const text =
    value < 0
      ? `a slot comes out of the underside by ${say(context, -value, 'up')}`
      : `${say(context, value, 'down')} of wood stays under its slots`;
  return {
    check: slotCover.name,
    verdict,
    part: part.id,
    where: slot.id,
    value,
    limit: UNDERSIDE_COVER,
    unit: 'mm',
    because: `${called(part)}: after the taper ${text}; ${say(context, UNDERSIDE_COVER, 'up')} is wanted`,
    fixes: verdict === 'ok' ? [] : [mend(context, slot, UNDERSIDE_COVER - value)],
    source: 'common practice, no source',
  };
}

/** Thinner tenons than this are not made, mm: common practice, no source. */
const THINNEST: Mm = 3;

/** Less than the room by this, so that a gauge rounded to the nearest step still keeps both covers, mm: 1/32 in. */
const ROUNDED: Mm = 0.79375;

/** How to win the missing cover without losing that of the show face: a nearer gauge, thinner tenons, a thicker top. */
function mend(context: CheckContext, slot: Mortise, missing: Mm): string {
  const gauge = slot.at[2] - missing;
  const nearest = SHOW_COVER + slot.width / 2;
  const from = 'from the show face';
  if (gauge >= nearest - 1e-6) return `gauge the slots ${say(context, gauge, 'down')} ${from}`;
  const room = gauge + slot.width / 2 - SHOW_COVER;
  if (room - ROUNDED >= THINNEST) {
    const thickness = say(context, room - ROUNDED, 'down');
    return `use tenons ${thickness} thick, gauged ${fine(context, SHOW_COVER + room / 2)} ${from}`;
  }
  const thicker = say(context, nearest - gauge + ROUNDED, 'up');
  return `make the top ${thicker} thicker there and gauge the slots ${say(context, nearest, 'up')} ${from}, or leave the tenons out`;
}

/** To the nearest 1/64 in or 0.1 mm: a gauge is set finer than a part is made. */
const fine = ({ units }: CheckContext, mm: Mm): string => formatLength(mm, units);

function showFace(context: CheckContext, part: Part, slots: readonly Mortise[]): Finding {
  const { slot, value } = worstOf(slots, (s) => s.at[2] - s.width / 2);
  const verdict = atLeastVerdict(value, SHOW_COVER, SHOW_COVER * LEAST);
  return {
    check: slotCover.name,
    verdict,
    part: part.id,
    where: slot.id,
    value,
    limit: SHOW_COVER,
    unit: 'mm',
    because: `${called(part)}: ${say(context, value, 'down')} of wood stays between the show face and its slots; ${say(context, SHOW_COVER, 'up')} is wanted`,
    fixes:
      verdict === 'ok' ? [] : [`gauge the slots ${say(context, SHOW_COVER + slot.width / 2, 'up')} from the show face`],
    source: 'common practice, no source',
  };
}

const nothing = ({ assembly }: CheckContext): Finding => ({
  check: slotCover.name,
  verdict: 'ok',
  part: assembly.parts[0]!.id,
  unit: 'mm',
  because: 'there are no slots in a top',
  fixes: [],
  source: 'our convention',
});
