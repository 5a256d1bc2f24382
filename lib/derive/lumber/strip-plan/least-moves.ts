import type { Arrangement } from './arrangement.ts';
import { fits } from './cells.ts';
import { judge } from './judge.ts';
import { movedBoards } from './moved-boards.ts';
import { planOf } from './plan-of.ts';
import { type StripModel, stripModel } from './strip-model.ts';
import type { StripPlace, StripPlan } from './strip-plan.ts';
import type { StripPin, StripProblem } from './strip-problem.ts';

/**
 * A cheapest plan that moves few boards from where they were. Among those that cost alike are the plan before, when its boards
 * still make the top, the plan that was found, its mirror image where nothing tells left from right, and what comes of these
 * when two strips change places.
 */
export function leastMoves(
  problem: StripProblem,
  found: StripPlan | undefined,
  before: StripPlan,
): StripPlan | undefined {
  const model = stripModel(problem);
  const kept = judged(model, before.strips);
  if (!found) return kept && laidAsBefore(problem, kept, before, Number.POSITIVE_INFINITY);
  const most = found.value + model.prices.alike;
  if (kept && kept.value <= most) return laidAsBefore(problem, kept, before, most);
  const image = model.mirrors ? judged(model, found.strips.toReversed()) : undefined;
  const starts = image && image.value <= most ? [found, image] : [found];
  const swapped = starts.map((plan) => withSwaps(model, plan, before, most));
  return laidAsBefore(problem, fewest(swapped, before), before, most);
}

/** The boards that keep their strip lie as they did, face and end, when that costs no more than `most`. */
function laidAsBefore(problem: StripProblem, plan: StripPlan, before: StripPlan, most: number): StripPlan {
  const pins = before.strips.flatMap(({ show, bottom }, j): StripPin[] => {
    const now = plan.strips[j]!;
    const kept = [
      show.mark === now.show.mark ? show : undefined,
      bottom?.mark === now.bottom?.mark ? bottom : undefined,
    ];
    return kept.flatMap((place) => (place ? [{ mark: place.mark, faceUp: place.faceUp, turned: place.turned }] : []));
  });
  const own = (problem.pins ?? []).filter(({ mark }) => !pins.some((pin) => pin.mark === mark));
  const laid = judged(stripModel({ ...problem, pins: [...own, ...pins] }), plan.strips);
  return laid && laid.value <= most ? laid : plan;
}

/** Changes two strips for as long as that moves fewer boards and costs no more. */
function withSwaps(model: StripModel, start: StripPlan, before: StripPlan, most: number): StripPlan {
  let best = start;
  for (;;) {
    const next = fewest([best, ...swapsOf(model, best).filter(({ value }) => value <= most)], before);
    if (next === best) return best;
    best = next;
  }
}

function swapsOf(model: StripModel, { strips }: StripPlan): StripPlan[] {
  const places = strips.map((_, j) => j);
  return places.flatMap((i) =>
    places.slice(i + 1).flatMap((j): StripPlan[] => {
      const swapped = strips.with(i, strips[j]!).with(j, strips[i]!);
      const plan = judged(model, swapped);
      return plan ? [plan] : [];
    }),
  );
}

/** The first of those that move the fewest boards. */
function fewest(plans: readonly StripPlan[], before: StripPlan): StripPlan {
  const moves = plans.map((plan) => movedBoards(before, plan).length);
  return plans[moves.indexOf(Math.min(...moves))]!;
}

type Strip = Pick<StripPlace, 'show' | 'bottom'>;

/** A plan of strips with the boards as they are now; undefined when they do not make the top that way. */
function judged(model: StripModel, strips: readonly Strip[]): StripPlan | undefined {
  const places = new Map(model.boards.map(({ mark }, i) => [mark, i]));
  const arrangement: Arrangement = {
    shows: strips.map(({ show }) => places.get(show.mark) ?? GONE),
    bottoms: strips.map(({ bottom }) => (bottom ? (places.get(bottom.mark) ?? GONE) : -1)),
  };
  const cells = [...arrangement.shows, ...arrangement.bottoms];
  const keeps = cells.every((i, cell) => i !== GONE && fits(model, i, cell));
  if (!keeps || model.uses.some(({ idle }, i) => !idle && !cells.includes(i))) return undefined;
  const found = judge(model, arrangement);
  return found && planOf(model, found);
}

/** Stands for a board that can serve no more. */
const GONE = -2;
