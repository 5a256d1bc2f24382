import { defineLumberWishes } from '../../shop/lumber-wishes.ts';
import type { Shop } from '../../shop/shop.ts';
import { THICKNESS_CLASSES } from '../../wood/thickness-classes.ts';
import type { BuyingRow, ClassNeed } from './buying-row.ts';
import { pileOf } from './yard-pile.ts';
import { type Enough, type EnoughOfAll, yardVisits } from './yard-visits.ts';
import type { ClassWanted, StripCover } from './yard-wanted.ts';

type OneClass = Pick<ClassNeed, 'wood' | 'lumber'>;

/** What made-up visits to the yard say of a buying list. */
export interface EnoughForList {
  of(need: OneClass): Enough | undefined;
  /** Of all classes together; absent with several woods, or where a class cannot be had. */
  readonly all?: Enough;
}

/**
 * Visits for each wood. Boards wider than the jointer are ripped before they are strips.
 *
 * @param classes thickest first.
 */
export function enoughFor(rows: readonly BuyingRow[], classes: readonly OneClass[], shop: Shop): EnoughForList {
  const { kerf, edgeTrim, grade } = shop.lumber;
  const saw = { kerf, widest: shop.machines.jointerWidth, narrowest: defineLumberWishes().leastWidth };
  const found = new Map<OneClass, Enough | undefined>();
  let all: EnoughOfAll['all'];
  const woods = new Set(classes.map(({ wood }) => wood));
  for (const wood of woods) {
    const own = classes.filter((one) => one.wood === wood);
    const ofClass = (one: OneClass): BuyingRow[] => rows.filter((r) => r.wood === wood && r.lumber === one.lumber);
    const outermost = own.findLast((one) => ofClass(one).some(({ isStrip }) => isStrip));
    const wanted = own.map((one): ClassWanted => {
      const { nominal } = THICKNESS_CLASSES.find(({ id }) => id === one.lumber)!;
      const strips = ofClass(one).filter(({ isStrip }) => isStrip);
      return {
        pile: pileOf(grade, nominal),
        ...(strips.length > 0 ? { cover: coverOf(strips, one === outermost ? 2 * edgeTrim : 0) } : {}),
        parts: ofClass(one).filter(({ isStrip }) => !isStrip),
      };
    });
    const visits = yardVisits(wanted, saw);
    own.forEach((one, c) => {
      found.set(one, visits.classes[c]);
    });
    if (woods.size === 1) all = visits.all;
  }
  return { of: (need) => found.get(need), ...(all ? { all } : {}) };
}

const coverOf = (strips: readonly BuyingRow[], trims: number): StripCover => ({
  width: strips.reduce((all, { pieces, finishedWidth }) => all + pieces * finishedWidth, trims),
  length: Math.max(...strips.map(({ length }) => length)),
  lost: Math.max(...strips.map(({ width, finishedWidth }) => width - finishedWidth)),
});
