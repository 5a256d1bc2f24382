import type { StripProblem, StripTerms } from '../../../lib/derive/lumber/strip-plan/strip-problem.ts';
import type { Board } from '../../../lib/model/records.ts';

/** Every order, pairing and side of a small pile, weighed by the words of the problem alone; Infinity when none serves. */
export function bruteForce(problem: StripProblem): number {
  const { settings, length } = problem;
  const usable = problem.boards.filter(
    (b) => b.length >= length && b.width - 2 * settings.jointing >= settings.leastWidth,
  );
  let best = Number.POSITIVE_INFINITY;
  const shows: Board[] = [];
  const bottoms: (Board | undefined)[] = [];
  // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: plain looking through, in one piece
  const place = (): void => {
    if (shows.length === settings.strips) {
      best = Math.min(best, cheapest(problem, shows, bottoms, best));
      return;
    }
    for (const show of usable) {
      if (shows.includes(show) || bottoms.includes(show)) continue;
      shows.push(show);
      const below = settings.layers === 'one' ? [undefined] : [undefined, ...usable];
      for (const bottom of below) {
        if (bottom === undefined && settings.layers === 'two') continue;
        if (bottom && (shows.includes(bottom) || bottoms.includes(bottom))) continue;
        bottoms.push(bottom);
        place();
        bottoms.pop();
      }
      shows.pop();
    }
  };
  place();
  return best;
}

const barkUp = (b: Board): 'A' | 'B' => b.bark ?? 'A';
const other = (face: 'A' | 'B'): 'A' | 'B' => (face === 'A' ? 'B' : 'A');

interface Lying {
  readonly board: Board;
  readonly face: 'A' | 'B';
  readonly start: number;
  readonly top: number;
}

function cheapest(problem: StripProblem, shows: Board[], bottoms: (Board | undefined)[], known: number): number {
  const { settings } = problem;
  const weights = (settings.preference as { readonly weights: StripTerms }).weights;
  const used = [...shows, ...bottoms.filter((b) => b !== undefined)];
  if (!pinsKept(problem, shows, bottoms)) return Number.POSITIVE_INFINITY;
  const litre = (b: Board): number =>
    ((b.thickness * b.width * b.length) / 1e6) * (b.thickness >= settings.scarceFrom ? 1 + settings.scarcePremium : 1);
  let cost = used.reduce((sum, b) => sum + weights.volume * litre(b), 0);
  for (let j = 1; j < shows.length; j++) cost += weights.tone * Math.abs(shows[j]!.tone! - shows[j - 1]!.tone!);
  if (cost >= known) return Number.POSITIVE_INFINITY;
  const wide = shows.map((b, j) => Math.min(b.width, bottoms[j]?.width ?? Infinity) - 2 * settings.jointing);
  const stacks = shows.map((b, j) => b.thickness + (bottoms[j]?.thickness ?? 0));
  for (let j = 0; 2 * j < wide.length; j++) {
    cost += (weights.symmetry * Math.abs(wide[j]! - wide[wide.length - 1 - j]!)) / 10;
  }
  // Of slides alike the cheaper.
  const slides = bestSlides(problem, wide, stacks).filter(({ reserve }) => reserve >= -1e-6);
  return Math.min(...slides.map((slid) => cost + slidCost(problem, shows, bottoms, slid, known - cost)));
}

interface Slid {
  readonly reserve: number;
  readonly seams: number[];
}

function slidCost(
  problem: StripProblem,
  shows: Board[],
  bottoms: (Board | undefined)[],
  slid: Slid,
  known: number,
): number {
  const { settings } = problem;
  const weights = (settings.preference as { readonly weights: StripTerms }).weights;
  let cost = weights.reserve * Math.max(0, settings.reserveCap - Math.max(0, slid.reserve));
  if (cost >= known) return Number.POSITIVE_INFINITY;
  const skim = settings.cleanUp / 2;
  bottoms.forEach((board, j) => {
    if (!board) return;
    const ways = (['A', 'B'] as const).flatMap((face) =>
      starts(problem, board).map(
        (start) =>
          weights.undersideDefects *
          least(problem, { board, face, start, top: shows[j]!.thickness - skim }, slid.seams, j),
      ),
    );
    cost += Math.min(...ways);
  });
  const sides = shows.map((board, j) =>
    [barkUp(board), other(barkUp(board))].map((face) => {
      const pin = problem.pins?.find((p) => p.mark === board.mark);
      if (pin?.faceUp !== undefined && pin.faceUp !== face) return Number.POSITIVE_INFINITY;
      const { start, area } = showStart(problem, board, face);
      const under = least(problem, { board, face, start, top: -skim }, slid.seams, j);
      return weights.shownDefects * area + weights.undersideDefects * under;
    }),
  );
  let flips = Number.POSITIVE_INFINITY;
  for (let bits = 0; bits < 2 ** shows.length; bits++) {
    let sum = 0;
    for (let j = 0; j < shows.length; j++) {
      sum += sides[j]![(bits >> j) & 1]!;
      if (j > 0 && settings.rings === 'alternate' && ((bits >> j) & 1) === ((bits >> (j - 1)) & 1))
        sum += weights.rings;
    }
    flips = Math.min(flips, sum);
  }
  return cost + flips;
}

function pinsKept(problem: StripProblem, shows: Board[], bottoms: (Board | undefined)[]): boolean {
  return (problem.pins ?? []).every(({ mark, strip, layer }) => {
    const [up, down] = [shows.findIndex((b) => b.mark === mark), bottoms.findIndex((b) => b?.mark === mark)];
    if (up < 0 && down < 0) return false;
    if (layer === 'show' && up < 0) return false;
    if (layer === 'bottom' && down < 0) return false;
    return strip === undefined || Math.max(up, down) === strip - 1;
  });
}

const starts = (problem: StripProblem, board: Board): number[] => {
  const spare = board.length - problem.length;
  const turns = board.defects.flatMap((d) => [d.from, d.to, d.from - problem.length, d.to - problem.length]);
  return [spare / 2, 0, spare, ...turns.filter((t) => t > 0 && t < spare)];
};

const lengthwise = (from: number, to: number, start: number, length: number): number =>
  Math.max(0, Math.min(to, start + length) - Math.max(from, start));

function showStart(problem: StripProblem, board: Board, face: 'A' | 'B'): { start: number; area: number } {
  let best = { start: 0, area: Number.POSITIVE_INFINITY };
  for (const start of starts(problem, board)) {
    let area = 0;
    for (const d of board.defects) {
      if ((d.face === face || d.face === 'through') && d.depth > problem.settings.cleanUp / 2) {
        area += (lengthwise(d.from, d.to, start, problem.length) * (d.far - d.near)) / 1e4;
      }
    }
    if (area < best.area - 1e-12) best = { start, area };
  }
  return best;
}

/** dm² on the underside, on the better end. */
function least(problem: StripProblem, lying: Lying, seams: number[], j: number): number {
  return Math.min(underside(problem, lying, seams, j, false), underside(problem, lying, seams, j, true));
}

// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: plain looking through, in one piece
function underside(problem: StripProblem, lying: Lying, seams: number[], j: number, turned: boolean): number {
  const { board, face, start, top } = lying;
  const [from, to] = [seams[j]!, seams[j + 1]!];
  const slope = (problem.centerThickness - problem.edgeThickness) / (problem.width / 2);
  const spare = board.width - 2 * problem.settings.jointing - (to - from);
  // The spare width lies outward, or half on each side.
  const left = from - problem.settings.jointing - (from >= -1e-6 ? 0 : to <= 1e-6 ? spare : spare / 2);
  const mirrored = (face === 'A') === turned;
  let sum = 0;
  for (const d of board.defects) {
    const [a, b] = mirrored ? [left + board.width - d.far, left + board.width - d.near] : [left + d.near, left + d.far];
    const bottom = top + board.thickness;
    const deep = Math.min(d.depth, board.thickness);
    const [z0, z1] =
      d.face === 'through' ? [top, bottom] : d.face === face ? [top, top + deep] : [bottom - deep, bottom];
    const cuts = [a, b, from, to, 0];
    for (const z of [z0, z1]) for (const sign of [-1, 1]) cuts.push((sign * (problem.centerThickness - z)) / slope);
    cuts.sort((x, y) => x - y);
    for (let k = 1; k < cuts.length; k++) {
      const middle = (cuts[k]! + cuts[k - 1]!) / 2;
      const t = problem.centerThickness - slope * Math.abs(middle);
      if (middle < Math.max(a, from) || middle > Math.min(b, to) || t <= z0 || t >= z1) continue;
      sum += ((cuts[k]! - cuts[k - 1]!) * lengthwise(d.from, d.to, start, problem.length)) / 1e4;
    }
  }
  return sum;
}

/** The slide of most reserve, nearest to the middle, by looking. */
// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: plain looking through, in one piece
function bestSlides(problem: StripProblem, wide: number[], stacks: number[]): Slid[] {
  const { settings, width, centerThickness, edgeThickness } = problem;
  const half = width / 2 + settings.edgeTrim + (settings.seamOnCenterLine ? 0 : settings.kerf / 2 + settings.jointing);
  const slope = (centerThickness - edgeThickness) / (width / 2);
  const total = wide.reduce((sum, w) => sum + w, 0);
  if (total < 2 * half - 1e-9 || wide.length * settings.leastWidth > 2 * half + 1e-9) return [];
  const spares = stacks.map((t) => t - centerThickness - settings.cleanUp);
  if (Math.min(...spares) + slope * half < 0) return [];
  const seamsAt = (start: number): number[] => {
    const seams = [start];
    for (const w of wide) seams.push(seams.at(-1)! + w);
    // Ripped from the outside in: no strip narrower than the least.
    seams[0] = -half;
    seams[seams.length - 1] = half;
    for (let j = 1; j < seams.length - 1; j++) seams[j] = Math.max(seams[j]!, seams[j - 1]! + settings.leastWidth);
    for (let j = seams.length - 2; j > 0; j--) seams[j] = Math.min(seams[j]!, seams[j + 1]! - settings.leastWidth);
    return seams;
  };
  const reserveAt = (start: number): number => {
    const seams = seamsAt(start);
    return Math.min(...spares.map((spare, j) => spare + slope * Math.max(0, seams[j]!, -seams[j + 1]!)));
  };
  const middle = -total / 2;
  if (settings.seamOnCenterLine) return centered(problem, wide, half, middle, reserveAt, seamsAt);
  if (settings.leastHalf > 0) return halved(problem, wide, spares, { half, slope }, reserveAt, seamsAt);
  const [low, high] = [half - total, -half];
  const GRID = 60;
  const at = (k: number): number => low + ((high - low) * k) / GRID;
  let [peak, most] = [middle, reserveAt(middle)];
  for (let k = 0; k < GRID; k++) {
    let [a, b] = [at(k), at(k + 1)];
    if (most >= settings.reserveCap || Math.max(reserveAt(a), reserveAt(b)) + slope * (b - a) < Math.max(most, 0))
      continue;
    for (let step = 0; step < 35; step++) {
      const [p, q] = [a + (b - a) / 3, b - (b - a) / 3];
      if (reserveAt(p) < reserveAt(q)) a = p;
      else b = q;
    }
    if (reserveAt(a) > most + 1e-10) [peak, most] = [a, reserveAt(a)];
  }
  const enough = Math.min(settings.reserveCap, most) - 1e-9;
  let found = peak;
  for (let k = 0; k <= 2000; k++) {
    const start = middle + ((found - middle) * k) / 2000;
    if (reserveAt(start) >= enough)
      return [{ reserve: most, seams: seamsAt(nearer(reserveAt, enough, start, middle, (found - middle) / 2000)) }];
  }
  found = peak;
  return [{ reserve: most, seams: seamsAt(found) }];
}

function nearer(reserveAt: (x: number) => number, enough: number, good: number, middle: number, step: number): number {
  if (good === middle) return good;
  let [ok, bad] = [good, good - step];
  for (let k = 0; k < 50; k++) {
    const x = (ok + bad) / 2;
    if (reserveAt(x) >= enough) ok = x;
    else bad = x;
  }
  return ok;
}

function centered(
  problem: StripProblem,
  wide: number[],
  half: number,
  middle: number,
  reserveAt: (x: number) => number,
  seamsAt: (x: number) => number[],
): Slid[] {
  const starts: number[] = [];
  let left = 0;
  const total = wide.reduce((sum, w) => sum + w, 0);
  for (const w of wide.slice(0, -1)) {
    left += w;
    if (left < half - 1e-9 || total - left < half - 1e-9) continue;
    if (Math.min(...seamsAt(-left).map(Math.abs)) <= 1e-9) starts.push(-left);
  }
  return nearestOf(problem, starts, middle, reserveAt, seamsAt);
}

/** Of some starts those of most reserve, up to the cap, and of these the nearest to the middle: two when they are as near. */
function nearestOf(
  { settings }: StripProblem,
  starts: number[],
  middle: number,
  reserveAt: (x: number) => number,
  seamsAt: (x: number) => number[],
): Slid[] {
  if (starts.length === 0) return [];
  const enough = Math.min(settings.reserveCap, Math.max(...starts.map(reserveAt))) - 1e-9;
  const good = starts.filter((start) => reserveAt(start) >= enough);
  const near = Math.min(...good.map((start) => Math.abs(start - middle)));
  const found = good.filter((start) => Math.abs(start - middle) <= near + 1e-9);
  return found.map((start) => ({ reserve: reserveAt(start), seams: seamsAt(start) }));
}

/**
 * The same with halves of a least width: every start at which the least reserve, a seam or what is allowed may turn, one by one.
 * The reserve of a strip is its spare, and that plus or minus the slope times its start; rips hold seams in their place.
 */
function halved(
  problem: StripProblem,
  wide: number[],
  spares: number[],
  { half, slope }: { half: number; slope: number },
  reserveAt: (x: number) => number,
  seamsAt: (x: number) => number[],
): Slid[] {
  const { settings } = problem;
  const edges = [0];
  for (const w of wide) edges.push(edges.at(-1)! + w);
  const total = edges.at(-1)!;
  const lines = spares.flatMap((spare, j) => [
    [0, spare],
    [-slope, spare - slope * edges[j + 1]!],
    [slope, spare + slope * edges[j]!],
    [0, spare - slope * (-half + (j + 1) * settings.leastWidth)],
    [0, spare + slope * (half - (wide.length - j) * settings.leastWidth)],
  ]);
  lines.push([0, settings.reserveCap]);
  const starts = [-total / 2, half - total, -half];
  lines.forEach(([a, b], k) => {
    for (const [c, d] of lines.slice(k + 1)) if (a !== c) starts.push((d! - b!) / (a! - c!));
  });
  edges.slice(1, -1).forEach((edge, k) => {
    const held = [-half + (k + 1) * settings.leastWidth, half - (wide.length - k - 1) * settings.leastWidth];
    for (const place of [0, settings.leastHalf, -settings.leastHalf, ...held]) starts.push(place - edge);
  });
  const allowed = starts.filter((start) => {
    if (start > -half + 1e-9 || start < half - total - 1e-9) return false;
    const seams = seamsAt(start).slice(1, -1).map(Math.abs);
    return seams.every((off) => off < 1e-6 || off > settings.leastHalf - 1e-6);
  });
  return nearestOf(problem, allowed, -total / 2, reserveAt, seamsAt);
}
