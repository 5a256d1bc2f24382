import { fits } from './cells.ts';
import { type Incumbent, improve } from './incumbent.ts';
import { type Judged, judge } from './judge.ts';
import type { StripModel } from './strip-model.ts';

/**
 * Mends the best plan by exchanging two boards, of the plan or left over, as long as that makes it cheaper: annealing does not
 * look at the underside. Answers the exchanges tried.
 */
export function polish(model: StripModel, incumbent: Incumbent): number {
  let tried = 0;
  for (let before = Number.POSITIVE_INFINITY; incumbent.best !== undefined && incumbent.value < before; ) {
    before = incumbent.value;
    tried += exchangeAll(model, incumbent, incumbent.best);
  }
  return tried;
}

function exchangeAll(model: StripModel, incumbent: Incumbent, { arrangement }: Judged): number {
  const { strips } = model;
  const used = new Set([...arrangement.shows, ...arrangement.bottoms]);
  // One empty place in the pile, for a bottom board that is not wanted.
  const pile = [...[...model.boards.keys()].filter((i) => !used.has(i)), -1];
  const cells = [...arrangement.shows, ...arrangement.bottoms, ...pile];
  let tried = 0;
  for (let a = 0; a < 2 * strips; a++) {
    for (let b = a + 1; b < cells.length; b++) {
      if (!fits(model, cells[a]!, b) || !fits(model, cells[b]!, a)) continue;
      tried++;
      [cells[a], cells[b]] = [cells[b]!, cells[a]!];
      const judged = judge(model, { shows: cells.slice(0, strips), bottoms: cells.slice(strips, 2 * strips) });
      if (judged === undefined || !improve(model, incumbent, judged)) [cells[a], cells[b]] = [cells[b]!, cells[a]!];
    }
  }
  return tried;
}
