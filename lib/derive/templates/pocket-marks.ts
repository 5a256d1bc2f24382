import type { Outline, OutlinePoint } from '../../geometry/outline.ts';
import { add, cross, dot, scale, type Vec2, type Vec3 } from '../../geometry/vec.ts';
import type { Pocket } from '../../model/feature.ts';

/** How a pocket looks from the reference face of its part, in the part's x and y. */
export interface PocketMark {
  readonly pocket: Pocket;
  readonly outline: readonly OutlinePoint[];
  /** Middle of the pocket. */
  readonly center: Vec2;
  /** Its axis, for a center line, when it is seen from the side. */
  readonly axis?: readonly [Vec2, Vec2];
}

/** Directions that differ from the face by less than this count as square or parallel to it. */
const SQUARE = 1e-9;

/**
 * The pocket as it shows on the reference face: its mouth when it goes square into the face, its side when it runs
 * parallel to it, a through hole as far as the outline of the face.
 */
export function pocketMark(pocket: Pocket, face: Outline): PocketMark {
  const [nx, ny, nz] = pocket.into;
  const at: Vec2 = [pocket.at[0], pocket.at[1]];
  if (Math.abs(Math.abs(nz) - 1) < SQUARE) return { pocket, outline: mouthOutline(pocket), center: at };
  if (Math.abs(nz) > SQUARE) throw new RangeError(`pocket ${pocket.id} goes slantwise through the face`);
  const half = widthInFace(pocket) / 2;
  const reach = (aside: number): number =>
    pocket.depth === 'through' ? distanceOut(face, [at[0] - ny * aside, at[1] + nx * aside], [nx, ny]) : pocket.depth;
  const corner = (along: number, aside: number): OutlinePoint => ({
    x: at[0] + nx * along - ny * aside,
    y: at[1] + ny * along + nx * aside,
  });
  return {
    pocket,
    outline: [corner(0, -half), corner(reach(-half), -half), corner(reach(half), half), corner(0, half)],
    center: [at[0] + (nx * reach(0)) / 2, at[1] + (ny * reach(0)) / 2],
    axis: [at, [at[0] + nx * reach(0), at[1] + ny * reach(0)]],
  };
}

/** Cut from the far face and not through to the near one, so that the wood hides it. */
export const isHidden = (pocket: Pocket): boolean => pocket.into[2] < -0.5 && pocket.depth !== 'through';

/** How far it is from a point inside an outline to where a line along `d` leaves it; arcs count as their chords. */
function distanceOut(outline: Outline, from: Vec2, d: Vec2): number {
  let nearest = Infinity;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const [ex, ey] = [b.x - a.x, b.y - a.y];
    const cross2 = d[0] * ey - d[1] * ex;
    if (Math.abs(cross2) < SQUARE) return;
    const t = ((a.x - from[0]) * ey - (a.y - from[1]) * ex) / cross2;
    const s = ((a.x - from[0]) * d[1] - (a.y - from[1]) * d[0]) / cross2;
    if (t > SQUARE && s >= -SQUARE && s <= 1 + SQUARE) nearest = Math.min(nearest, t);
  });
  return Number.isFinite(nearest) ? nearest : 0;
}

/** Size of the pocket in the plane of the face, square to its direction. */
function widthInFace(pocket: Pocket): number {
  if (pocket.kind === 'bore') return pocket.diameter;
  const aside: Vec3 = [-pocket.into[1], pocket.into[0], 0];
  return Math.abs(dot(pocket.along, aside)) > 0.5 ? pocket.length : pocket.width;
}

/** The mouth in x and y: exact arcs for round ends, two half circles for a bore. */
function mouthOutline(pocket: Pocket): OutlinePoint[] {
  if (pocket.kind === 'bore') {
    const [x, y] = pocket.at;
    const r = pocket.diameter / 2;
    return [
      { x: x - r, y, bulge: 1 },
      { x: x + r, y, bulge: 1 },
    ];
  }
  const { along: a, length, width } = pocket;
  const b = cross([0, 0, 1], a);
  const round = pocket.kind !== 'mortise' || pocket.ends === 'round';
  const straight = round ? length / 2 - width / 2 : length / 2;
  const point = (s: number, t: number, bulge?: number): OutlinePoint => {
    const p = add(pocket.at, add(scale(a, s), scale(b, t)));
    return { x: p[0], y: p[1], ...(bulge === undefined ? {} : { bulge }) };
  };
  const bulge = round ? 1 : undefined;
  return [
    point(-straight, -width / 2),
    point(straight, -width / 2, bulge),
    point(straight, width / 2),
    point(-straight, width / 2, bulge),
  ];
}
