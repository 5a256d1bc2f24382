import { sides, sweep } from '../../drawing/bulge.ts';
import type { Arc, Mark, Poly, Pt } from '../../drawing/entity.ts';
import { textCorners } from '../../drawing/text-size.ts';
import { along, cross, dot, left, polar, sub } from '../../drawing/vec.ts';

/** What something takes up on a sheet: the two ends of a line, or the corners of a convex room in order, mm. */
export type Room = readonly Pt[];

/** Chords of an arc span no more than this, degrees. */
const CHORD = 3;

/** What marks cover: lines, arcs as chords, arrowheads, and the room of each lettering. */
export const roomsOf = (marks: readonly Mark[], scale: number): Room[] =>
  marks.flatMap((mark) => (ROOMS[mark.kind] as (mark: Mark, scale: number) => Room[])(mark, scale));

const ROOMS: { readonly [K in Mark['kind']]: (mark: Extract<Mark, { kind: K }>, scale: number) => Room[] } = {
  poly: polyRooms,
  arc: (arc: Arc) => chords(arc.center, arc.radius, arc.start, (arc.end - arc.start + 720) % 360 || 360),
  circle: ({ center, radius }) => chords(center, radius, 0, 360),
  solid: ({ corners }) => [corners],
  text: (text, scale) => [textCorners(text, scale)],
};

function polyRooms(poly: Poly): Room[] {
  return sides(poly).flatMap((side): Room[] => {
    if (side.bulge === 0) return [[side.from, side.to]];
    const { center, radius, start, span } = sweep(side);
    return chords(center, radius, start, span);
  });
}

function chords(center: Pt, radius: number, start: number, span: number): Room[] {
  const count = Math.max(1, Math.ceil(Math.abs(span) / CHORD));
  const at = (k: number): Pt => along(center, polar(start + (span * k) / count), radius);
  return Array.from({ length: count }, (_, k) => [at(k), at(k + 1)]);
}

/** A room of four corners, larger by `by` mm on every side. */
export function grown(room: Room, by: number): Room {
  const n = room.length;
  return room.map((corner, i) => {
    const ahead = unit(sub(corner, room[(i + n - 1) % n]!));
    const back = unit(sub(corner, room[(i + 1) % n]!));
    return along(along(corner, ahead, by), back, by);
  });
}

const unit = (v: Pt): Pt => {
  const size = Math.hypot(v[0], v[1]);
  return [v[0] / size, v[1] / size];
};

/** A room with the upright box around it, so that most pairs are told apart by a glance. */
export interface BoxedRoom {
  readonly room: Room;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

export const boxed = (room: Room): BoxedRoom => ({ room, x: reach(room, [1, 0]), y: reach(room, [0, 1]) });

/** Whether two rooms share more than a border: no line parallel to a side of either parts them. */
export function overlap(a: BoxedRoom, b: BoxedRoom): boolean {
  if (a.x[1] <= b.x[0] || b.x[1] <= a.x[0] || a.y[1] <= b.y[0] || b.y[1] <= a.y[0]) return false;
  return ![...normals(a.room), ...normals(b.room)].some((n) => parted(a.room, b.room, n));
}

const normals = (room: Room): Pt[] => room.map((p, i) => left(sub(room[(i + 1) % room.length]!, p)));

function parted(a: Room, b: Room, axis: Pt): boolean {
  const [lowA, highA] = reach(a, axis);
  const [lowB, highB] = reach(b, axis);
  return highA <= lowB || highB <= lowA;
}

function reach(room: Room, axis: Pt): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const p of room) {
    const d = dot(p, axis);
    low = Math.min(low, d);
    high = Math.max(high, d);
  }
  return [low, high];
}

/** Whether a point lies inside a closed row of corners. */
export function isInside([x, y]: Pt, corners: readonly Pt[]): boolean {
  let inside = false;
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    if (a[1] > y === b[1] > y) return;
    const turn = cross(sub(b, a), sub([x, y], a));
    if (turn > 0 === b[1] > a[1]) inside = !inside;
  });
  return inside;
}

/** The places around a wanted one on a grid of 1 mm, from near to far: itself, the eight around it, and so on. */
export function* placesAround([x, y]: Pt, far: number): Generator<Pt> {
  yield [x, y];
  for (let ring = 1; ring <= far; ring++) {
    for (let k = -ring; k < ring; k++) {
      yield [x + ring, y + k];
      yield [x - ring, y - k];
      yield [x - k, y + ring];
      yield [x + k, y - ring];
    }
  }
}
