import type { Arrangement } from './arrangement.ts';
import { FLIPS, type Flip } from './faces.ts';
import type { Row } from './row.ts';
import { asFarRight, reserveOf, type Slid, seamsAt, slide } from './slide.ts';
import type { StripModel } from './strip-model.ts';
import type { StripTerms } from './strip-problem.ts';
import { bottomUnderside, showUnderside } from './underside-cost.ts';

/** An arrangement with everything settled that follows from it: slide, flips, ends, and what it costs. */
export interface Judged {
  readonly arrangement: Arrangement;
  readonly seams: Float64Array;
  readonly reserves: readonly number[];
  readonly reserve: number;
  readonly flips: readonly Flip[];
  readonly terms: StripTerms;
  readonly value: number;
}

/** The strips of an arrangement as wide as their boards, and the stack each has to spare over the center line. */
export function rowOf(model: StripModel, { shows, bottoms }: Arrangement): Row {
  const edges = new Float64Array(model.strips + 1);
  const spare = new Float64Array(model.strips);
  for (let j = 0; j < model.strips; j++) {
    const show = shows[j]!;
    const bottom = bottoms[j]!;
    const width = bottom < 0 ? model.width[show]! : Math.min(model.width[show]!, model.width[bottom]!);
    edges[j + 1] = edges[j]! + width;
    spare[j] = model.thick[show]! + (bottom < 0 ? 0 : model.thick[bottom]!) - model.base;
  }
  return { edges, spare };
}

/**
 * Judges an arrangement exactly, of two slides alike the cheaper; undefined when it is too narrow, or too thin anywhere, or when
 * defects on the underside cost more than `most`.
 */
export function judge(
  model: StripModel,
  arrangement: Arrangement,
  most = Number.POSITIVE_INFINITY,
): Judged | undefined {
  const row = rowOf(model, arrangement);
  const slid = slide(model, row);
  if (slid === undefined) return undefined;
  const judged = judgeAt(model, arrangement, row, slid, most);
  const other = asFarRight(model, row, slid);
  if (other === undefined) return judged;
  const again = judgeAt(model, arrangement, row, other, most);
  return judged && again ? (again.value < judged.value ? again : judged) : (judged ?? again);
}

function judgeAt(model: StripModel, arrangement: Arrangement, row: Row, slid: Slid, most: number): Judged | undefined {
  const seams = seamsAt(model, row.edges, slid.start);
  const { prices, strips } = model;
  let bottoms = 0;
  for (let j = 0; j < strips; j++) {
    bottoms += bottomUnderside(model, arrangement, seams, j);
    if (prices.of.undersideDefects * bottoms > most) return undefined;
  }
  const shows = new Float64Array(2 * strips);
  const costs = new Float64Array(2 * strips);
  for (let j = 0; j < strips; j++) {
    for (const flip of FLIPS) {
      const area = showUnderside(model, arrangement, seams, j, flip);
      shows[2 * j + flip] = area;
      costs[2 * j + flip] = model.showCost[2 * arrangement.shows[j]! + flip]! + prices.of.undersideDefects * area;
    }
  }
  const flips = bestFlips(costs, prices.of.rings);
  const reserves = arrangement.shows.map((_, j) => reserveOf(model, row.spare[j]!, seams[j]!, seams[j + 1]!));
  const undersideDefects = flips.reduce<number>((sum, flip, j) => sum + shows[2 * j + flip]!, bottoms);
  const terms = termsOf(model, arrangement, { row, reserve: slid.reserve, flips, undersideDefects });
  const value = costOf(model, terms, arrangement, flips);
  if (!Number.isFinite(value)) return undefined;
  return { arrangement, seams, reserves, reserve: slid.reserve, flips, terms, value };
}

/** Flips of least cost (two numbers a strip), neighbors alike costing extra: a programme over two states; the first flip wins ties. */
function bestFlips(costs: Float64Array, alike: number): Flip[] {
  const strips = costs.length / 2;
  const total = costs.slice();
  for (let j = 1; j < strips; j++) {
    const [up, down] = [total[2 * j - 2]!, total[2 * j - 1]!];
    total[2 * j]! += Math.min(down, up + alike);
    total[2 * j + 1]! += Math.min(up, down + alike);
  }
  const flips: Flip[] = new Array(strips).fill(0);
  let flip: Flip = total[2 * strips - 2]! <= total[2 * strips - 1]! ? 0 : 1;
  for (let j = strips - 1; j >= 0; j--) {
    flips[j] = flip;
    if (j === 0) break;
    const other: Flip = flip === 0 ? 1 : 0;
    if (total[2 * j - 2 + other]! <= total[2 * j - 2 + flip]! + alike) flip = other;
  }
  return flips;
}

interface Settled {
  readonly row: Row;
  readonly reserve: number;
  readonly flips: readonly Flip[];
  readonly undersideDefects: number;
}

function termsOf(model: StripModel, { shows, bottoms }: Arrangement, settled: Settled): StripTerms {
  const { prices, strips } = model;
  const { counted } = prices;
  const { edges } = settled.row;
  const width = (j: number): number => edges[j + 1]! - edges[j]!;
  const cap = model.problem.settings.reserveCap;
  let [shownDefects, tone, rings, symmetry] = [0, 0, 0, 0];
  for (let j = 0; j < strips; j++) {
    shownDefects += counted('shownDefects', model.shown[2 * shows[j]! + settled.flips[j]!]!);
    if (j > 0) tone += Math.abs(model.tone[shows[j]!]! - model.tone[shows[j - 1]!]!);
    if (j > 0 && settled.flips[j] === settled.flips[j - 1]) rings++;
    if (2 * j < strips) symmetry += Math.abs(width(j) - width(strips - 1 - j)) / 10;
  }
  const used = [...shows, ...bottoms].filter((i) => i >= 0);
  return {
    reserve: counted('reserve', cap - Math.min(cap, Math.max(0, settled.reserve))),
    shownDefects,
    undersideDefects: settled.undersideDefects,
    rings,
    tone,
    volume: used.reduce((sum, i) => sum + model.litres[i]!, 0),
    symmetry: counted('symmetry', symmetry),
  };
}

function costOf(model: StripModel, terms: StripTerms, { shows }: Arrangement, flips: readonly Flip[]): number {
  if (shows.some((i, j) => model.showCost[2 * i + flips[j]!] === Number.POSITIVE_INFINITY)) return Infinity;
  return Object.entries(model.prices.of).reduce((sum, [term, price]) => {
    return sum + price * terms[term as keyof StripTerms];
  }, 0);
}
