import type { Vec3 } from '../../geometry/vec.ts';
import { type Box, cornersOf, middleOf } from './box.ts';
import type { ViewName } from './scene-view.ts';

/** From where one looks: a point to look at, and the way there. */
export interface Eye {
  /** mm, in the table's frame. */
  readonly target: Vec3;
  /** Degrees to the right of the front. */
  readonly turn: number;
  /** Degrees above level. */
  readonly tilt: number;
  /** mm from eye to target. */
  readonly distance: number;
}

const DIRECTIONS: { readonly [V in ViewName]: { readonly turn: number; readonly tilt: number } } = {
  whole: { turn: 32, tilt: 19 },
  end: { turn: 90, tilt: 5 },
  underside: { turn: 38, tilt: -30 },
  joints: { turn: 36, tilt: 20 },
};

/** Straight up and down the upright is lost, degrees. */
const STEEPEST = 88;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Unit direction from target to eye. */
export function towardEye({ turn, tilt }: Pick<Eye, 'turn' | 'tilt'>): Vec3 {
  const [t, r] = [radians(turn), radians(tilt)];
  return [Math.sin(t) * Math.cos(r), -Math.cos(t) * Math.cos(r), Math.sin(r)];
}

/** To the right and up in the picture. */
export function axesOf({ turn, tilt }: Pick<Eye, 'turn' | 'tilt'>): readonly [Vec3, Vec3] {
  const [t, r] = [radians(turn), radians(tilt)];
  return [
    [Math.cos(t), Math.sin(t), 0],
    [-Math.sin(t) * Math.sin(r), Math.cos(t) * Math.sin(r), Math.cos(r)],
  ];
}

/** A named view of a box that fills the picture but for a margin; `field` is upright, degrees, `aspect` width to height. */
export function eyeFor(view: ViewName, box: Box, field: number, aspect: number, margin = 1.1): Eye {
  const direction = DIRECTIONS[view];
  const [right, up] = axesOf(direction);
  const toward = towardEye(direction);
  const tall = Math.tan(radians(field / 2)) / margin;
  const wide = tall * aspect;
  let target = middleOf(box);
  let distance = 0;
  const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  // What is nearer looks larger: the middle of the box is not the middle of the picture. A few rounds settle it.
  for (let round = 0; round < 4; round++) {
    const seen = cornersOf(box).map((p): Vec3 => {
      const d: Vec3 = [p[0] - target[0], p[1] - target[1], p[2] - target[2]];
      return [dot(right, d), dot(up, d), dot(toward, d)];
    });
    distance = Math.max(...seen.map(([x, y, z]) => Math.max(Math.abs(x) / wide, Math.abs(y) / tall) + z));
    const flat = seen.map(([x, y, z]) => [x / (distance - z), y / (distance - z)] as const);
    const middle = ([0, 1] as const).map((k) => {
      const all = flat.map((p) => p[k]);
      return ((Math.min(...all) + Math.max(...all)) / 2) * distance;
    });
    target = [0, 1, 2].map((k) => target[k]! + right[k]! * middle[0]! + up[k]! * middle[1]!) as unknown as Vec3;
  }
  return { target, ...direction, distance };
}

export interface Move {
  readonly turn?: number;
  readonly tilt?: number;
  /** Times the distance. */
  readonly zoom?: number;
  /** Share of the height of the picture, to the right and up. */
  readonly pan?: readonly [number, number];
}

/** The eye after a move by hand. */
export function movedEye(eye: Eye, { turn = 0, tilt = 0, zoom = 1, pan }: Move, field: number): Eye {
  const [right, up] = axesOf(eye);
  const size = 2 * eye.distance * Math.tan(radians(field / 2));
  const [dx, dy] = [(pan?.[0] ?? 0) * size, (pan?.[1] ?? 0) * size];
  return {
    target: [0, 1, 2].map((k) => eye.target[k]! - right[k]! * dx - up[k]! * dy) as unknown as Vec3,
    turn: eye.turn + turn,
    tilt: Math.min(STEEPEST, Math.max(-STEEPEST, eye.tilt + tilt)),
    distance: Math.min(40000, Math.max(250, eye.distance * zoom)),
  };
}

/** Part of the way from one eye to another, the short way round. */
export function betweenEyes(a: Eye, b: Eye, share: number): Eye {
  const mix = (p: number, q: number): number => p + (q - p) * share;
  const turn = ((((b.turn - a.turn + 180) % 360) + 360) % 360) - 180;
  return {
    target: [0, 1, 2].map((k) => mix(a.target[k]!, b.target[k]!)) as unknown as Vec3,
    turn: a.turn + turn * share,
    tilt: mix(a.tilt, b.tilt),
    distance: mix(a.distance, b.distance),
  };
}
