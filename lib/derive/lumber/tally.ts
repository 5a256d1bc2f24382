import type { Board } from '../../model/records.ts';
import { boardFeet } from '../../units/board-feet.ts';
import type { Mm } from '../../units/mm.ts';
import type { BuyingList } from './buying-list.ts';
import type { BuyingRow } from './buying-row.ts';
import type { CutKind } from './cut-plan/cut-plan.ts';
import { cutFromRack, type Rest } from './rest-rack.ts';

/** What of one need is bought. */
export interface TallyRow {
  readonly need: BuyingRow;
  /** Marks of boards that serve, no more than are needed. */
  readonly boards: readonly string[];
  readonly missing: number;
}

/** Boards bought so far against what is needed. */
export interface Tally {
  /** Strips of the top, the thickest first: each wants a board of its own. */
  readonly strips: readonly TallyRow[];
  /** Spare boards that could stand in for the thickest strip. */
  readonly spares: { readonly wanted: number; readonly boards: readonly string[] };
  /** Other parts, several to a board: board feet by rough sizes, and of how many pieces the boards that are left have room. */
  readonly rest: { readonly boardFeet: number; readonly left: number };
  /** Stop buying, or go on. */
  readonly verdict: 'stop' | 'go on';
  /** What decides: these sizes, or a plan of which board goes where. */
  readonly by: 'sizes' | 'plan';
  /** What the sizes alone say. */
  readonly bySizes: 'stop' | 'go on';
}

/** A board that is thick enough to this is thick enough, mm (our convention). */
const SAME: Mm = 1e-6;

const serves = (board: Board, { thickness, width, length }: BuyingRow): boolean =>
  board.thickness >= thickness - SAME && board.width >= width - SAME && board.length >= length - SAME;

/** Gives every strip the thinnest board that serves it, the thickest strips first; what is left goes to spares and the rest. */
export function tallyOf({ rows, spares }: BuyingList, boards: readonly Board[], kerf: Mm): Tally {
  const byThickness = (a: { thickness: Mm }, b: { thickness: Mm }): number => b.thickness - a.thickness;
  const free = boards.toSorted((a, b) => a.thickness - b.thickness || a.width - b.width || (a.mark < b.mark ? -1 : 1));
  const take = (need: BuyingRow, count: number): string[] => {
    const found: string[] = [];
    while (found.length < count) {
      const at = free.findIndex((board) => serves(board, need));
      if (at < 0) break;
      found.push(free.splice(at, 1)[0]!.mark);
    }
    return found;
  };
  const needs = rows.filter((row) => row.isStrip).sort(byThickness);
  const strips = needs.map((need): TallyRow => {
    const own = take(need, need.pieces);
    return { need, boards: own, missing: need.pieces - own.length };
  });
  const thickest = needs[0];
  const spare = thickest ? take(thickest, spares.count) : [];
  const others = rows.filter((row) => !row.isStrip);
  const wanted = others.reduce((all, r) => all + boardFeet(r.thickness * r.width * r.length) * r.pieces, 0);
  const left = Math.max(...FIRST.map((first) => roomFor(others, free, first, kerf)));
  const enough = strips.every(({ missing }) => missing === 0) && spare.length >= spares.count && left >= wanted;
  return {
    strips,
    spares: { wanted: spares.count, boards: spare },
    rest: { boardFeet: wanted, left },
    verdict: enough ? 'stop' : 'go on',
    by: 'sizes',
    bySizes: enough ? 'stop' : 'go on',
  };
}

/** Both ways of cutting are tried for all boards. */
const FIRST: readonly CutKind[] = ['rip', 'crosscut'];

/** Board feet of parts that come out of the free boards: the thickest first, then the largest, each from the thinnest board with room. */
function roomFor(others: readonly BuyingRow[], free: readonly Board[], first: CutKind, kerf: Mm): number {
  const piles = free.map(({ thickness, width, length }) => ({ thickness, rack: [{ width, length }] as Rest[] }));
  let got = 0;
  for (const need of others.toSorted((a, b) => b.thickness - a.thickness || b.width * b.length - a.width * a.length)) {
    const { thickness, width, length, pieces } = need;
    for (let n = 0; n < pieces; n++) {
      const from = piles.find(
        (pile) => pile.thickness >= thickness - SAME && cutFromRack(pile.rack, need, first, kerf),
      );
      if (!from) break;
      got += boardFeet(thickness * width * length);
    }
  }
  return got + 1e-9;
}
