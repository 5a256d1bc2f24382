import { mostReserve } from './most-reserve.ts';
import type { Row } from './row.ts';
import type { StripModel } from './strip-model.ts';

export interface Slid {
  /** mm, the left edge of the first strip from the center line, before the outer edges are ripped. */
  readonly start: number;
  readonly reserve: number;
}

/** Less reserve than this below zero is rounding, mm. */
const ROUNDING = 1e-7;

/** Reserves that differ by less are alike, mm; a slide is looked for that has this much less than asked. */
const ALIKE = 1e-9;
const SLACK = 1e-10;

/** Halvings of the reserve where ripping goes through an outer strip: to far below `ALIKE`. */
const BISECTIONS = 60;

/**
 * Where seam j lies after ripping to the blank, the row starting at `start`. The rip begins at the outer edges; an outer strip
 * that is down to the least width hands the rest of the rip to its neighbor, so each seam is held between the two stacks of
 * least strips beside it.
 */
export function seamAt(model: StripModel, edges: Float64Array, start: number, j: number): number {
  return Math.min(highest(model, j), Math.max(lowest(model, j), start + edges[j]!));
}

/** Where the strips on its left at their least width put a seam, and those on its right. */
function lowest({ half, problem }: StripModel, j: number): number {
  return -half + j * problem.settings.leastWidth;
}
function highest({ half, strips, problem }: StripModel, j: number): number {
  return half - (strips - j) * problem.settings.leastWidth;
}

/** All seams of a slid row, left edge first. */
export function seamsAt(model: StripModel, edges: Float64Array, start: number): Float64Array {
  const seams = new Float64Array(model.strips + 1);
  for (let j = 0; j <= model.strips; j++) seams[j] = seamAt(model, edges, start, j);
  return seams;
}

/** The reserve of strip j between its seams. */
export const reserveOf = (model: StripModel, spare: number, from: number, to: number): number =>
  spare + model.slope * Math.max(0, from, -to);

function reserveAt(model: StripModel, { edges, spare }: Row, start: number): number {
  let low = Number.POSITIVE_INFINITY;
  let from = seamAt(model, edges, start, 0);
  for (let j = 0; j < model.strips; j++) {
    const to = seamAt(model, edges, start, j + 1);
    low = Math.min(low, reserveOf(model, spare[j]!, from, to));
    from = to;
  }
  return low;
}

/**
 * The slide of a row: the most reserve, counted up to the cap; among those the one nearest to the middle. Exact up to 1e-9 mm.
 * Undefined when the row is too narrow for the blank, the blank for its strips, a strip too thin wherever the row lies, a half of a
 * strip over the center line too narrow, or no seam can fall on that line where one must. Of two slides as near to the middle,
 * the left one: see `asFarRight`.
 */
export function slide(model: StripModel, row: Row): Slid | undefined {
  const { strips, half } = model;
  const total = row.edges[strips]!;
  const { leastWidth, seamOnCenterLine } = model.problem.settings;
  if (total < 2 * half - 1e-9 || strips * leastWidth > 2 * half + 1e-9) return undefined;
  const slid = seamOnCenterLine ? centerSlide(model, row) : freeSlide(model, row);
  return slid !== undefined && slid.reserve >= -ROUNDING ? slid : undefined;
}

const middleOf = ({ strips }: StripModel, { edges }: Row): number => -edges[strips]! / 2;

/** The slide as far on the other side of the middle, when it is as good: then neither comes first. */
export function asFarRight(model: StripModel, row: Row, { start, reserve }: Slid): Slid | undefined {
  const { strips, half, problem } = model;
  const total = row.edges[strips]!;
  const other = -total - start;
  if (Math.abs(other - start) < ALIKE || other > -half + SLACK || other < half - total - SLACK) return undefined;
  const there = reserveAt(model, row, other);
  const enough = Math.min(problem.settings.reserveCap, reserve) - ALIKE;
  if (there < enough || !halvesHold(model, row.edges, other)) return undefined;
  const onLine =
    !problem.settings.seamOnCenterLine || seamsAt(model, row.edges, other).some((x) => Math.abs(x) < ON_LINE);
  return onLine ? { start: other, reserve: there } : undefined;
}

/** The slide nearest to the middle; where that leaves less than the cap, the nearest of those that leave most. */
function freeSlide(model: StripModel, row: Row): Slid | undefined {
  const middle = middleOf(model, row);
  const there = reserveAt(model, row, middle);
  const cap = model.problem.settings.reserveCap;
  if (model.slope === 0) {
    const start = nearestWithHalves(model, row.edges, [model.half - row.edges[model.strips]!, -model.half]);
    return start === undefined ? undefined : { start, reserve: there };
  }
  if (there >= cap - ALIKE && halvesHold(model, row.edges, middle)) return { start: middle, reserve: there };
  const start = nearest(model, row, mostAmong(model, row, Math.min(cap, mostReserve(model, row))));
  return start === undefined ? undefined : { start, reserve: reserveAt(model, row, start) };
}

/** The most reserve up to `most` that a slide can give; less than `most` where ripping goes through an outer strip. */
function mostAmong(model: StripModel, row: Row, most: number): number {
  if (most < 0 || nearest(model, row, most) !== undefined) return most;
  let [good, bad] = [-ROUNDING, most];
  for (let step = 0; step < BISECTIONS; step++) {
    const reserve = (good + bad) / 2;
    if (nearest(model, row, reserve) === undefined) bad = reserve;
    else good = reserve;
  }
  return good;
}

/**
 * The start nearest to the middle that leaves each strip so much reserve and no half too narrow; undefined when none does. Say
 * strip m lies over the center line: the strips left of it want the row to lie far to the left, those right of it far to the right.
 * Taking the wrong m only asks for more.
 */
function nearest(model: StripModel, row: Row, reserve: number): number | undefined {
  const { strips, half } = model;
  const total = row.edges[strips]!;
  const middle = middleOf(model, row);
  const enough = reserve - SLACK;
  let best: number | undefined;
  let high = -half;
  for (let m = 0; m < strips; m++) {
    if (row.spare[m]! >= enough) {
      let low = half - total;
      for (let j = m + 1; j < strips; j++) low = Math.max(low, leastStart(model, row, j, enough));
      const start = low <= high + SLACK ? nearestWithHalves(model, row.edges, [low, high]) : undefined;
      if (start !== undefined && nearer(start, best, middle)) best = start;
    }
    high = Math.min(high, mostStart(model, row, m, enough));
  }
  return best;
}

const nearer = (start: number, best: number | undefined, middle: number): boolean =>
  best === undefined || Math.abs(start - middle) < Math.abs(best - middle) - ALIKE;

/** A seam this near to the center line lies on it, mm (rounding). */
const ON_LINE = 1e-6;

/** No strip that is opened on the center line has too narrow a half: every seam lies on that line or far enough off. */
function halvesHold(model: StripModel, edges: Float64Array, start: number): boolean {
  const least = model.problem.settings.leastHalf;
  if (least === 0) return true;
  for (let j = 1; j < model.strips; j++) {
    const off = Math.abs(seamAt(model, edges, start, j));
    if (off > ON_LINE && off < least - ON_LINE) return false;
  }
  return true;
}

/**
 * The start between two that is nearest to the middle and leaves no half too narrow: the middle, an end, or where a seam lies on
 * the center line or just far enough off it.
 */
function nearestWithHalves(
  model: StripModel,
  edges: Float64Array,
  [low, high]: readonly [number, number],
): number | undefined {
  const { strips, problem } = model;
  const middle = -edges[strips]! / 2;
  const first = Math.min(high, Math.max(low, middle));
  if (halvesHold(model, edges, first)) return first;
  const least = problem.settings.leastHalf;
  let best: number | undefined;
  for (let j = 1; j < strips; j++) {
    for (const place of [-least, 0, least]) {
      const start = place - edges[j]!;
      if (start < low - SLACK || start > high + SLACK || !nearer(start, best, middle)) continue;
      if (halvesHold(model, edges, start)) best = start;
    }
  }
  return best;
}

/** The least start with so much reserve for strip j, right of the center line; Infinity when ripping keeps it too far in. */
function leastStart(model: StripModel, { edges, spare }: Row, j: number, reserve: number): number {
  const inner = (reserve - spare[j]!) / model.slope;
  if (inner <= lowest(model, j)) return Number.NEGATIVE_INFINITY;
  return inner > highest(model, j) ? Number.POSITIVE_INFINITY : inner - edges[j]!;
}

/** The same for a strip left of the center line: the most start. */
function mostStart(model: StripModel, { edges, spare }: Row, j: number, reserve: number): number {
  const inner = (spare[j]! - reserve) / model.slope;
  if (inner >= highest(model, j + 1)) return Number.POSITIVE_INFINITY;
  return inner < lowest(model, j + 1) ? Number.NEGATIVE_INFINITY : inner - edges[j + 1]!;
}

/** The best of the slides that put a seam on the center line, with room for the least width of all strips on either side. */
function centerSlide(model: StripModel, row: Row): Slid | undefined {
  const { strips, half } = model;
  const { edges } = row;
  const middle = middleOf(model, row);
  const cap = model.problem.settings.reserveCap;
  let best: Slid | undefined;
  for (let k = 1; k < strips; k++) {
    const start = -edges[k]!;
    if (start > -half + 1e-9 || start < half - edges[strips]! - 1e-9) continue;
    if (Math.abs(seamAt(model, edges, start, k)) >= 1e-9) continue;
    const reserve = reserveAt(model, row, start);
    const gain = best === undefined ? 1 : Math.min(cap, reserve) - Math.min(cap, best.reserve);
    const near = nearer(start, best?.start, middle);
    if (gain > ALIKE || (gain > -ALIKE && near)) best = { start, reserve };
  }
  return best;
}
