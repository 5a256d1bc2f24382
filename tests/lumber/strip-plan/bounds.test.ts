import { expect, test } from 'vitest';
import { Annealing } from '../../../lib/derive/lumber/strip-plan/anneal.ts';
import type { Arrangement } from '../../../lib/derive/lumber/strip-plan/arrangement.ts';
import { fits } from '../../../lib/derive/lumber/strip-plan/cells.ts';
import type { Incumbent } from '../../../lib/derive/lumber/strip-plan/incumbent.ts';
import { judge } from '../../../lib/derive/lumber/strip-plan/judge.ts';
import { flipExtra, labelOf, labelReserve, reserveCost } from '../../../lib/derive/lumber/strip-plan/label.ts';
import { orderBound } from '../../../lib/derive/lumber/strip-plan/order-bound.ts';
import { Pairing } from '../../../lib/derive/lumber/strip-plan/pairing.ts';
import { BOTTOM, IDLE, SHOW, SINGLE } from '../../../lib/derive/lumber/strip-plan/role-table.ts';
import { showOrders } from '../../../lib/derive/lumber/strip-plan/show-orders.ts';
import { type StripModel, stripModel } from '../../../lib/derive/lumber/strip-plan/strip-model.ts';
import { byTone, toneWindows } from '../../../lib/derive/lumber/strip-plan/tone-window.ts';
import { randomFrom } from '../../tables/random.ts';
import { oddProblem } from './odd-problem.ts';

/** Random arrangements of a pile, and some near a good one; only such as its pins allow, mirror images the one way that is looked for. */
function arrangements(model: StripModel, seed: number): Arrangement[] {
  const random = randomFrom(seed);
  const { strips, boards, problem } = model;
  const { layers } = problem.settings;
  const found = Array.from({ length: 60 }, (): Arrangement => {
    const rest = [...boards.keys()].map((i) => [i, random()] as const).sort((a, b) => a[1] - b[1]);
    const pile = rest.map(([i]) => i);
    const shows = pile.splice(0, strips);
    const share = random();
    const below = (): boolean => layers === 'two' || (layers === 'either' && random() < share);
    return { shows, bottoms: shows.map(() => (below() ? (pile.pop() ?? -1) : -1)) };
  });
  const incumbent: Incumbent = { value: Number.POSITIVE_INFINITY };
  new Annealing(model, incumbent, 600, seed).advance(600);
  if (incumbent.best) {
    const { shows, bottoms } = incumbent.best.arrangement;
    for (let k = 0; k < 20; k++) {
      const [a, b] = [Math.floor(random() * strips), Math.floor(random() * strips)];
      found.push({ shows: shows.with(a, shows[b]!).with(b, shows[a]!), bottoms });
    }
  }
  return found
    .filter((a) => [...a.shows, ...a.bottoms].every((i, cell) => fits(model, i, cell)))
    .filter((a) => model.uses.every(({ idle }, i) => idle || a.shows.includes(i) || a.bottoms.includes(i)))
    .map((a) =>
      model.mirrors && a.shows[0]! > a.shows.at(-1)!
        ? { shows: a.shows.toReversed(), bottoms: a.bottoms.toReversed() }
        : a,
    );
}

/** What gives a plan up although only plans dearer than it were to be given up; undefined when nothing does. */
function givenUpBy(model: StripModel, { shows, bottoms }: Arrangement, value: number): string | undefined {
  const tones = byTone(model);
  const places = shows.map((i) => tones.indexOf(i));
  const windows = toneWindows(model, tones);
  const [low, high] = [Math.min(...places), Math.max(...places)];
  const window = windows.find((w) => w.low === low && w.high === high) ?? windows[0]!;
  const roles = new Uint8Array(model.boards.length).fill(IDLE);
  shows.forEach((i, j) => {
    roles[i] = bottoms[j]! < 0 ? SINGLE : SHOW;
    if (bottoms[j]! >= 0) roles[bottoms[j]!] = BOTTOM;
  });
  const label = labelOf(model, tones, roles, window.cost);
  const reserve = labelReserve(model, label);
  if (reserve === undefined) return 'reserve of the label';
  const most = value + Math.max(2.5 * model.prices.alike, 1e-11 * value);
  if (label.cost + label.range + flipExtra(model, label) + reserveCost(model, reserve) > most) return 'label';
  if (model.strips < 7 && label.cost + orderBound(model, label, most - label.cost).cost > most)
    return 'bound of orders';
  const effort = { spent: 0, limit: Number.POSITIVE_INFINITY };
  const orders = showOrders(model, label, shows, { value: most }, effort) ?? [];
  const order = orders.find((o) => o.shows.every((i, j) => i === shows[j]));
  if (!order) return 'orders';
  const bits = bottoms.map((i) => (i < 0 ? -1 : label.bottoms.indexOf(i)));
  const { seamOnCenterLine, leastHalf } = model.problem.settings;
  const free = model.slope > 0 && !seamOnCenterLine && leastHalf === 0;
  const found = (row: 'middle' | 'off' | 'any'): boolean => {
    const incumbent: Incumbent = { value: most };
    const pairing = new Pairing(model, label, order, row, incumbent);
    if (pairing.least < most) pairing.search(bits, effort);
    return incumbent.best !== undefined;
  };
  if (!found('any')) return 'pairing, any row';
  return free && !found('middle') && !found('off') ? 'pairing' : undefined;
}

test.each([
  ['few wide strips', [2, 3, 4, 5], 8, 300],
  ['many strips', [6, 7, 8], 20, 80],
] as const)('a plan that exists is never given up: %s', (_, strips, most, piles) => {
  let plans = 0;
  for (let seed = 1; seed <= piles; seed++) {
    const problem = oddProblem(seed, strips, most);
    const model = stripModel(problem);
    const narrowest = model.strips * problem.settings.leastWidth;
    if (model.boards.length < model.strips || narrowest > 2 * model.half) continue;
    for (const arrangement of arrangements(model, seed)) {
      const value = judge(model, arrangement)?.value;
      if (value === undefined) continue;
      plans++;
      expect([seed, arrangement, givenUpBy(model, arrangement, value)]).toEqual([seed, arrangement, undefined]);
    }
  }
  expect(plans).toBeGreaterThan(300);
});
