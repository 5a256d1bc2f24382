import type { Finding, Verdict } from '../../model/finding.ts';
import { atLeastVerdict, type Check, type CheckContext, notChecked } from './check.ts';
import { sayForce, sayMass } from './say-load.ts';
import { solvedFixes } from './solve-fix.ts';
import { weightOf } from './solvers/mass.ts';
import { FLOOR_FRICTION, slidePush } from './solvers/slide.ts';
import { TIP_LIMITS } from './solvers/tip.ts';
import { type StandingPiece, standingPiece } from './standing.ts';
import { type TipCase, tipCases } from './tip-cases.ts';

const CHECK = 'tipping';

/** How near the piece is to tipping over when someone sits on its edge, puts a weight near it, or pushes it. */
export const tipping: Check = {
  name: CHECK,
  run(context) {
    const { assembly } = context;
    const piece = standingPiece(assembly);
    if (!piece) return [notChecked(CHECK, assembly.parts[0]!.id, 'two places where it stands on the floor', 'times')];
    return tipCases(context, piece).map((one) => finding(context, piece, one));
  },
};

function finding(context: CheckContext, piece: StandingPiece, one: TipCase): Finding {
  const { ok } = TIP_LIMITS.value;
  const verdict = verdictOf(one);
  return {
    check: `${CHECK} ${one.name}`,
    verdict,
    part: piece.loaded.id,
    ...(Number.isFinite(one.margin) ? { value: one.margin } : {}),
    limit: ok,
    unit: 'times',
    because:
      one.name === 'when pushed'
        ? pushed(context, piece, one, verdict)
        : `${one.who}: ${outcome(context, one, verdict)}`,
    fixes: verdict === 'ok' ? [] : fixesFor(context, one, verdict, piece.under),
    source: TIP_LIMITS.source,
    load: one.who,
    assumptions: [
      `it weighs ${sayMass(context, piece.mass)} and stands on the middles of its pads, or on its lowest corners`,
    ],
  };
}

/** A push that would tip it, but slides it first on a usual floor, is worth another look only. */
function verdictOf({ margin, slidingMargin }: TipCase): Verdict {
  const { ok, least } = TIP_LIMITS.value;
  const verdict = atLeastVerdict(margin, ok, least);
  return verdict === 'change it' && slidingMargin >= least ? 'look again' : verdict;
}

const HAND: { readonly [V in Verdict]: string } = {
  ok: 'leaves enough in hand',
  'look again': 'leaves little in hand',
  'change it': 'tips it over',
  'not checked': 'is not known',
};

function outcome(context: CheckContext, { tipsAt, mass }: TipCase, verdict: Verdict): string {
  if (!Number.isFinite(tipsAt)) return 'no weight there tips it over, its feet stand out that far';
  return `it tips over at ${sayMass(context, tipsAt, 'down')}; ${sayMass(context, mass)} ${HAND[verdict]}`;
}

function pushed(context: CheckContext, { weight }: StandingPiece, one: TipCase, verdict: Verdict): string {
  const { tipsAt, mass, who, margin } = one;
  const slides = slidePush(weight, FLOOR_FRICTION.value.usual);
  const first =
    slides < weightOf(tipsAt)
      ? `slides before that, at ${sayForce(context, slides, 'down')}`
      : 'does not slide before that';
  const held = margin < TIP_LIMITS.value.least && verdict === 'look again';
  const hand = held
    ? 'that is too little where its feet cannot slide'
    : `${sayForce(context, weightOf(mass))} ${HAND[verdict]}`;
  return `${who}: it tips over at ${sayForce(context, weightOf(tipsAt), 'down')}; ${hand}; on a usual floor it ${first}`;
}

function reached(
  context: CheckContext,
  { name, mass }: TipCase,
  times: number,
  which: 'margin' | 'slidingMargin',
): string {
  if (!Number.isFinite(times)) return 'feet that no weight there tips it over';
  if (name !== 'when pushed') return sayMass(context, times * mass, 'down');
  return which === 'slidingMargin'
    ? 'a base that slides before it tips'
    : sayForce(context, weightOf(times * mass), 'down');
}

/** Moves that bring enough in hand, or at least what keeps it standing; none that puts feet out beyond the top. */
function fixesFor(context: CheckContext, one: TipCase, verdict: Verdict, under: boolean): string[] {
  const { ok, least } = TIP_LIMITS.value;
  const toward = (limit: number, which: 'margin' | 'slidingMargin'): string[] =>
    solvedFixes(
      context,
      {
        measure(moved) {
          const piece = standingPiece(moved.assembly);
          if (!piece || (under && !piece.under)) return undefined;
          return tipCases(moved, piece).find(({ name }) => name === one.name)?.[which];
        },
        limit,
        want: 'at least',
        levers: one.levers,
        say: (times) => reached(context, one, times, which),
      },
      one[which],
    );
  const enough = toward(ok, 'margin');
  return enough.length > 0 || verdict !== 'change it' ? enough : toward(least, 'slidingMargin');
}
