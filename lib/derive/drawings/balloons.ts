import type { Box } from '../../drawing/bounds.ts';
import type { Vec2 } from '../../geometry/vec.ts';
import { type Deg, type Mm, radians } from '../../units/mm.ts';
import { cellAt, middleOf, type SeenCells } from './exploded-cells.ts';
import { betweenSegments, toSegment } from './segments-apart.ts';

/** A mark in a circle beside a view, with a straight leader to its piece; mm in view coordinates. */
export interface Balloon {
  /** Number of the piece in the cells. */
  readonly solid: number;
  readonly center: Vec2;
  readonly radius: Mm;
  /** End of the leader, on a face that is seen. */
  readonly tip: Vec2;
}

export interface BalloonWish {
  readonly solid: number;
  readonly radius: Mm;
}

/** Lengths that are bound to the paper, paper mm: ours. */
const GAP = 1.5;
const LEAD = { least: 4.5, most: 60, step: 2.5 } as const;
const TIP_CLEAR = 2.5;

/** Tips that are tried on a piece, directions from each, and places in one direction; our convention. */
const TIPS = 12;
const TURNS = 32;
const PLACES = 3;

/**
 * A leader over another piece counts so much more than one over white paper; one along an edge, so many paper mm; our
 * convention.
 */
const OVER_WOOD = 3;
const ALONG_EDGE = 6;

/** Directions of the edges of an isometric view, degrees. */
const EDGES = [30, 90, 150] as const;
const NEAR_EDGE = 8;

/** How often the order is changed when one finds no place; our convention. */
const TRIES = 12;

/** A place for a balloon, and what speaks against it in mm of leader. */
interface Candidate {
  readonly balloon: Balloon;
  readonly cost: number;
}

/**
 * A balloon for each piece that is seen, in white space inside `room`: no leader crosses another, nor a balloon.
 * Undefined when not all find a place.
 *
 * @param clear how far each cell is from the next that shows another face, mm.
 */
export function balloons(
  cells: SeenCells,
  clear: Float64Array,
  wishes: readonly BalloonWish[],
  room: Box,
  scale: number,
): readonly Balloon[] | undefined {
  const own = cellsOf(cells);
  const white: White = ([x, y], radius) => {
    const { min, max } = room;
    if (x - radius < min[0] || x + radius > max[0] || y - radius < min[1] || y + radius > max[1]) return false;
    const cell = cellAt(cells, [x, y]);
    return cells.seen[cell] === -1 && clear[cell]! >= radius + GAP * scale;
  };
  let order = wishes
    .map((wish) => ({ wish, tips: tipsOf(cells, clear, own.get(wish.solid) ?? [], scale) }))
    .filter(({ tips }) => tips.length > 0)
    .map(({ wish, tips }) => candidates(cells, wish, tips, white, scale))
    .sort((a, b) => a.length - b.length);
  for (let k = 0; k < TRIES; k++) {
    const placed: Balloon[] = [];
    const failed = order.find((some) => {
      const found = some.find(({ balloon }) => !placed.some((other) => clash(balloon, other, scale)));
      if (found) placed.push(found.balloon);
      return !found;
    });
    if (!failed) return placed.sort((a, b) => a.solid - b.solid);
    if (failed === order[0]) return undefined;
    order = [failed, ...order.filter((one) => one !== failed)];
  }
  return undefined;
}

/** Whether a circle stands on white paper. */
type White = (center: Vec2, radius: Mm) => boolean;

/** The cells that show each piece. */
function cellsOf({ seen }: SeenCells): Map<number, number[]> {
  const own = new Map<number, number[]>();
  for (let cell = 0; cell < seen.length; cell++) {
    const solid = seen[cell]!;
    if (solid === -1) continue;
    const list = own.get(solid);
    if (list) list.push(cell);
    else own.set(solid, [cell]);
  }
  return own;
}

/** Places on a piece well inside what is seen of one of its faces, spread over it. */
function tipsOf(cells: SeenCells, clear: Float64Array, own: readonly number[], scale: number): Vec2[] {
  const most = own.reduce((max, cell) => Math.max(max, clear[cell]!), 0);
  const least = Math.min(0.8 * most, TIP_CLEAR * scale);
  const good = own.filter((cell) => clear[cell]! >= least);
  const count = Math.min(TIPS, good.length);
  return Array.from({ length: count }, (_, k) => middleOf(cells, good[Math.floor(((k + 0.5) * good.length) / count)]!));
}

/** All places that a balloon may have when it is alone, best first. */
function candidates(
  cells: SeenCells,
  wish: BalloonWish,
  tips: readonly Vec2[],
  white: White,
  scale: number,
): readonly Candidate[] {
  const turns = Array.from({ length: TURNS }, (_, k) => (360 * (k + 0.5)) / TURNS);
  return tips
    .flatMap((tip) => turns.flatMap((turn) => alongRay(cells, wish, tip, turn, white, scale)))
    .sort((a, b) => a.cost - b.cost);
}

/** The places in one direction from a tip. */
function alongRay(
  cells: SeenCells,
  { solid, radius }: BalloonWish,
  tip: Vec2,
  turn: Deg,
  white: White,
  scale: number,
): Candidate[] {
  const [dx, dy] = [Math.cos(radians(turn)), Math.sin(radians(turn))];
  const at = (reach: Mm): Vec2 => [tip[0] + dx * reach, tip[1] + dy * reach];
  const slant = alongEdge(turn) ? ALONG_EDGE * scale : 0;
  const found: Candidate[] = [];
  let [walked, over] = [0, 0];
  for (let lead: number = LEAD.least; lead <= LEAD.most && found.length < PLACES; lead += LEAD.step) {
    const reach = lead * scale + radius;
    for (; walked < reach; walked += cells.size) {
      const one = cells.seen[cellAt(cells, at(walked))]!;
      if (one !== -1 && one !== solid) over += cells.size;
    }
    const center = at(reach);
    if (white(center, radius)) {
      found.push({ balloon: { solid, center, radius, tip }, cost: reach + slant + OVER_WOOD * over });
    }
  }
  return found;
}

const alongEdge = (turn: Deg): boolean =>
  EDGES.some((edge) => Math.abs(((turn - edge + 90 + 360) % 180) - 90) < NEAR_EDGE);

function clash(a: Balloon, b: Balloon, scale: number): boolean {
  const gap = GAP * scale;
  return (
    Math.hypot(a.center[0] - b.center[0], a.center[1] - b.center[1]) < a.radius + b.radius + gap ||
    toSegment(a.center, b.center, b.tip) < a.radius + gap ||
    toSegment(b.center, a.center, a.tip) < b.radius + gap ||
    betweenSegments([a.center, a.tip], [b.center, b.tip]) < gap
  );
}
