import type { StripModel } from './strip-model.ts';

/**
 * Strips in order, as bare widths: `edges[j]` mm from the left edge of the first strip to the left edge of strip j, as wide as
 * the boards allow; `spare[j]` mm of stack over what the center line wants. The whole row may slide sideways under the taper.
 *
 * Strip j spans [a, b] from the center line and has the reserve spare[j] + slope · max(0, a, -b): less where it reaches in.
 */
export interface Row {
  readonly edges: Float64Array;
  readonly spare: Float64Array;
}

export interface Slid {
  /** mm, the left edge of the first strip from the center line, before the outer edges are ripped. */
  readonly start: number;
  readonly reserve: number;
}

/**
 * The most reserve any slide can give, in closed form. Say strip m lies over the center line: those left of it lose
 * slope · start, those right of it gain as much, so the best start is where the two limits cross, kept within the range in
 * which the row covers the blank. Taking the wrong m only gives less, so the best over all m is exact.
 * Not looked at: a seam on the center line, and rips that use up an outer strip; both only take away.
 */
export function mostReserve(model: StripModel, row: Row): number {
  const { strips, slope, half } = model;
  const { edges, spare } = row;
  const total = edges[strips]!;
  if (slope === 0) return least(spare, strips);
  const after = suffix(row, strips, slope);
  let best = Number.NEGATIVE_INFINITY;
  let left = Number.POSITIVE_INFINITY;
  for (let m = 0; m < strips; m++) {
    const right = after[m + 1]!;
    const start = Math.min(-half, Math.max(half - total, crossing(left, right, slope)));
    const reserve = Math.min(spare[m]!, left - slope * start, right + slope * start);
    if (reserve > best) best = reserve;
    left = Math.min(left, spare[m]! - slope * edges[m + 1]!);
  }
  return best;
}

const SUFFIX = new Float64Array(65);

/** The limits of the strips from j on when all of them lie right of the center line, for a start of 0. */
function suffix(row: Row, strips: number, slope: number): Float64Array {
  SUFFIX[strips] = Number.POSITIVE_INFINITY;
  for (let j = strips - 1; j >= 0; j--) SUFFIX[j] = Math.min(SUFFIX[j + 1]!, row.spare[j]! + slope * row.edges[j]!);
  return SUFFIX;
}

function crossing(left: number, right: number, slope: number): number {
  if (left === Number.POSITIVE_INFINITY && right === Number.POSITIVE_INFINITY) return 0;
  return (left - right) / (2 * slope);
}

function least(values: Float64Array, count: number): number {
  let low = Number.POSITIVE_INFINITY;
  for (let j = 0; j < count; j++) low = Math.min(low, values[j]!);
  return low;
}

/**
 * Seams of a slid row after ripping to the blank, left edge first. The rip starts at the outer edges; an outer strip that is
 * down to the least width hands the rest of the rip to its neighbor, so each seam is held between the two stacks of least
 * strips beside it.
 */
export function seamsAt(model: StripModel, edges: Float64Array, start: number): Float64Array {
  const { strips, half } = model;
  const narrow = model.problem.settings.leastWidth;
  const seams = new Float64Array(strips + 1);
  for (let j = 0; j <= strips; j++) {
    seams[j] = Math.min(half - (strips - j) * narrow, Math.max(-half + j * narrow, start + edges[j]!));
  }
  return seams;
}

/** The reserve of strip j between its seams. */
export const reserveOf = (model: StripModel, spare: number, from: number, to: number): number =>
  spare + model.slope * Math.max(0, from, -to);

function reserveAt(model: StripModel, row: Row, start: number): number {
  const seams = seamsAt(model, row.edges, start);
  let low = Number.POSITIVE_INFINITY;
  for (let j = 0; j < model.strips; j++) {
    low = Math.min(low, reserveOf(model, row.spare[j]!, seams[j]!, seams[j + 1]!));
  }
  return low;
}

/**
 * The slide of a row: the most reserve, counted up to the cap; among those the one nearest to the middle. Exact up to 1e-9 mm.
 * Undefined when the row is too narrow for the blank, the blank for its strips, or no seam can
 * fall on the center line where one must.
 */
export function slide(model: StripModel, row: Row): Slid | undefined {
  const { strips, half } = model;
  const total = row.edges[strips]!;
  const narrowest = strips * model.problem.settings.leastWidth;
  if (total < 2 * half - 1e-9 || narrowest > 2 * half + 1e-9) return undefined;
  if (model.problem.settings.seamOnCenterLine) return bestSlide(model, row, centerSeams(model, row.edges));
  const range: Range = { low: half - total, high: -half };
  const straight = bestSlide(model, row, straightSlides(model, row, range));
  // Ripping through an outer strip only takes reserve away: the best slide without it, where it does not happen, stays the best.
  const most = Math.min(model.problem.settings.reserveCap, mostReserve(model, row));
  const whole = straight !== undefined && straight.reserve >= most - 1e-9;
  if (whole && !ripsThrough(model, row.edges, straight.start)) return straight;
  return bestSlide(model, row, slides(model, row, range));
}

function bestSlide(model: StripModel, row: Row, starts: readonly number[]): Slid | undefined {
  const middle = -row.edges[model.strips]! / 2;
  let best: Slid | undefined;
  for (const start of starts) {
    const reserve = reserveAt(model, row, start);
    if (best === undefined || better(model, { start, reserve }, best, middle)) best = { start, reserve };
  }
  return best;
}

function better(model: StripModel, a: Slid, b: Slid, middle: number): boolean {
  const cap = model.problem.settings.reserveCap;
  const gain = Math.min(cap, a.reserve) - Math.min(cap, b.reserve);
  if (Math.abs(gain) > 1e-9) return gain > 0;
  return Math.abs(a.start - middle) < Math.abs(b.start - middle) - 1e-9;
}

/** Slides that put a seam on the center line, with room for the least width of all strips on either side. */
function centerSeams(model: StripModel, edges: Float64Array): number[] {
  const { strips, half } = model;
  const total = edges[strips]!;
  const starts: number[] = [];
  for (let k = 1; k < strips; k++) {
    const start = -edges[k]!;
    const covers = start <= -half + 1e-9 && start >= half - total - 1e-9;
    if (covers && Math.abs(seamsAt(model, edges, start)[k]!) < 1e-9) starts.push(start);
  }
  return starts;
}

/** Candidates: for each strip taken as the one over the center line, the slides nearest to the middle that lose nothing. */
function slides(model: StripModel, row: Row, range: Range): number[] {
  const { strips } = model;
  const middle = -row.edges[strips]! / 2;
  const levels = Array.from({ length: strips }, (_, m) => levelOf(model, row, m, range));
  const cap = Math.min(model.problem.settings.reserveCap, Math.max(...levels));
  const starts = [middle];
  for (let m = 0; m < strips; m++) {
    if (levels[m]! < cap - 1e-9) continue;
    const ok = within(model, row, m, cap, range);
    starts.push(Math.min(ok.high, Math.max(ok.low, middle)));
  }
  return starts;
}

interface Range {
  readonly low: number;
  readonly high: number;
}

/** A slide rips an outer strip down to the least width and goes on into its neighbor. */
function ripsThrough(model: StripModel, edges: Float64Array, start: number): boolean {
  const { strips, half } = model;
  const narrow = model.problem.settings.leastWidth;
  for (let j = 1; j < strips; j++) {
    const seam = start + edges[j]!;
    if (seam < -half + j * narrow - 1e-9 || seam > half - (strips - j) * narrow + 1e-9) return true;
  }
  return false;
}

/** The candidates in closed form, where only the outer strips are ripped: see `mostReserve`. */
function straightSlides(model: StripModel, row: Row, range: Range): number[] {
  const { strips, slope } = model;
  const middle = -row.edges[strips]! / 2;
  if (slope === 0) return [middle];
  const cap = Math.min(model.problem.settings.reserveCap, mostReserve(model, row));
  const after = [...suffix(row, strips, slope).subarray(0, strips + 1)];
  const starts = [middle];
  let left = Number.POSITIVE_INFINITY;
  for (let m = 0; m < strips; m++) {
    const low = Math.max(range.low, (cap - after[m + 1]!) / slope);
    const high = Math.min(range.high, (left - cap) / slope);
    if (row.spare[m]! >= cap - 1e-9 && low <= high + 1e-9) starts.push(Math.min(high, Math.max(low, middle)));
    left = Math.min(left, row.spare[m]! - slope * row.edges[m + 1]!);
  }
  return starts;
}

const BISECTIONS = 60;

/** The most reserve with strip m over the center line: left limits fall and right limits rise with the start. */
function levelOf(model: StripModel, row: Row, m: number, range: Range): number {
  let { low, high } = range;
  for (let step = 0; step < BISECTIONS; step++) {
    const start = (low + high) / 2;
    const seams = seamsAt(model, row.edges, start);
    if (leftLimit(model, row, m, seams) > rightLimit(model, row, m, seams)) low = start;
    else high = start;
  }
  return Math.max(sides(model, row, m, low), sides(model, row, m, high));
}

function sides(model: StripModel, row: Row, m: number, start: number): number {
  const seams = seamsAt(model, row.edges, start);
  return Math.min(row.spare[m]!, leftLimit(model, row, m, seams), rightLimit(model, row, m, seams));
}

/** Starts with at least a reserve, strip m over the center line. */
function within(model: StripModel, row: Row, m: number, reserve: number, range: Range): Range {
  const enough = reserve - 1e-10;
  const last = (ok: (seams: Float64Array) => boolean, from: number, toward: number): number => {
    if (ok(seamsAt(model, row.edges, toward))) return toward;
    let [good, bad] = [from, toward];
    for (let step = 0; step < BISECTIONS; step++) {
      const start = (good + bad) / 2;
      if (ok(seamsAt(model, row.edges, start))) good = start;
      else bad = start;
    }
    return good;
  };
  return {
    low: last((seams) => rightLimit(model, row, m, seams) >= enough, range.high, range.low),
    high: last((seams) => leftLimit(model, row, m, seams) >= enough, range.low, range.high),
  };
}

function leftLimit(model: StripModel, row: Row, m: number, seams: Float64Array): number {
  let low = Number.POSITIVE_INFINITY;
  for (let j = 0; j < m; j++) low = Math.min(low, row.spare[j]! - model.slope * seams[j + 1]!);
  return low;
}

function rightLimit(model: StripModel, row: Row, m: number, seams: Float64Array): number {
  let low = Number.POSITIVE_INFINITY;
  for (let j = m + 1; j < model.strips; j++) low = Math.min(low, row.spare[j]! + model.slope * seams[j]!);
  return low;
}
