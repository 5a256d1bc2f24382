import { seeded } from './strip-plan/seeded.ts';
import { boardsOf } from './yard-pile.ts';
import { type CutWay, visitOnce } from './yard-visit.ts';
import type { ClassWanted, YardSaw } from './yard-wanted.ts';

/** Board feet that were enough in so many of 100 visits. */
export interface Enough {
  readonly in50: number;
  readonly in80: number;
  readonly in95: number;
}

/** What was enough of each class, undefined where its boards cannot give it, and of all together. */
export interface EnoughOfAll {
  readonly classes: readonly (Enough | undefined)[];
  readonly all?: Enough;
}

/** Visits that are made up, and the seed they are drawn with: our convention. */
const VISITS = 100;
const SEED = 1;

/** Ways to cut the parts; of each visit the cheapest counts. */
const WAYS: readonly CutWay[] = (['rip', 'crosscut'] as const).flatMap((first): CutWay[] => [
  { first, by: ({ width }) => width },
  { first, by: ({ length }) => length },
  { first, by: ({ width, length }) => width * length },
]);

/**
 * Board feet that are enough: boards are drawn from the piles one by one until all comes out of them, many times over.
 * Strips are as wide as the boards come; parts come from what is left of these and from further boards. A coarse plan.
 *
 * @param wanted classes of one wood, thickest first.
 */
export function yardVisits(wanted: readonly ClassWanted[], saw: YardSaw, visits = VISITS): EnoughOfAll {
  const bought = Array.from({ length: visits }, (_, visit) => {
    const boards = wanted.map(({ pile }, c) => boardsOf(pile, seeded(SEED + visit * wanted.length + c)));
    const ways = WAYS.map((way) => visitOnce(wanted, saw, way, boards));
    return ways.reduce((best, way) => (sum(way) < sum(best) ? way : best));
  });
  const classes = wanted.map((_, c) => enough(bought.map((feet) => feet[c])));
  const all = enough(bought.map(sum));
  return { classes, ...(all ? { all } : {}) };
}

/** Infinity when one class cannot be had. */
const sum = (feet: readonly (number | undefined)[]): number =>
  feet.reduce<number>((all, f) => all + (f ?? Infinity), 0);

function enough(feet: readonly (number | undefined)[]): Enough | undefined {
  const known = feet.filter((f): f is number => f !== undefined && f < Infinity).sort((a, b) => a - b);
  if (known.length < feet.length || known.length === 0) return undefined;
  const at = (share: number): number => known[Math.ceil(share * known.length) - 1]!;
  return { in50: at(0.5), in80: at(0.8), in95: at(0.95) };
}
