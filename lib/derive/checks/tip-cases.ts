import type { Vec2 } from '../../geometry/vec.ts';
import type { Mm } from '../../units/mm.ts';
import { type CheckContext, say } from './check.ts';
import { sayForce, sayMass } from './say-load.ts';
import { GRAVITY, weightOf } from './solvers/mass.ts';
import { type Figure, ours } from './solvers/ours.ts';
import { FLOOR_FRICTION, slidePush } from './solvers/slide.ts';
import { tipLoad, tipMargin, tipPush } from './solvers/tip.ts';
import type { StandingPiece } from './standing.ts';

/** One way to tip a piece over. */
export interface TipCase {
  /** "at an end". */
  readonly name: string;
  /** "someone of 110 kg on the very end". */
  readonly who: string;
  /** kg that it must stand. */
  readonly mass: number;
  /** kg that tip it at the worst of the places; Infinity when nothing does. */
  readonly tipsAt: number;
  /** What holds it down over what tips it; above 1 it stands. */
  readonly margin: number;
  /** The same against what a usual floor lets through: a push is no greater than what makes it slide. */
  readonly slidingMargin: number;
  readonly levers: readonly string[];
}

/** Where a weight is put down: so far inside an edge. */
export const INSIDE_EDGE: Figure<Mm> = ours(50, 'our convention');

/** How people sit on a bench: the first so far from an end, and each takes so much of it. */
export const SITTING: Figure<{ readonly fromEnd: Mm; readonly each: Mm }> = ours(
  { fromEnd: 100, each: 500 },
  'our convention',
);

const END_LEVERS = ['frame.inset', 'side.inset'];
const SIDE_LEVERS = ['foot.length', 'panelLeg.width', 'post.spacing', 'side.width', 'pad.fromEnds'];

/** The usual ways for a table or, when people sit on it, for a bench. */
export const tipCases = (context: CheckContext, piece: StandingPiece): TipCase[] =>
  piece.loaded.kind === 'seat' ? [sitting(context, piece)] : onTable(context, piece);

function onTable(context: CheckContext, piece: StandingPiece): TipCase[] {
  const { loads } = context;
  const { min, max } = piece.box;
  const [x, y] = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  const person = sayMass(context, loads.person);
  const weight = loads.edge / GRAVITY;
  const inside = INSIDE_EDGE.value;
  const ends = [min[0], max[0]].map((end): Vec2 => [end, y]);
  const sides = [min[1], max[1]].map((side): Vec2 => [x, side]);
  const near = ringInside(piece, inside);
  const nearEdge = `a weight of ${sayMass(context, weight)} ${say(context, inside)} inside an edge`;
  const atEnd = loaded(piece, 'at an end', `someone of ${person} on the very end`, loads.person, ends, END_LEVERS);
  const atSide = loaded(
    piece,
    'at a long edge',
    `someone of ${person} on a long edge`,
    loads.person,
    sides,
    SIDE_LEVERS,
  );
  const corners = [min[0], max[0]].flatMap((end) => sides.map((side): Vec2 => [end, side[1]]));
  const all = [...END_LEVERS, ...SIDE_LEVERS];
  const atCorner = loaded(piece, 'at a corner', `someone of ${person} on a corner`, loads.person, corners, all);
  // On four feet in a rectangle a corner is no worse than the end or the edge next to it.
  const worse = atCorner.tipsAt < WORSE * Math.min(atEnd.tipsAt, atSide.tipsAt);
  return [
    atEnd,
    atSide,
    ...(worse ? [atCorner] : []),
    loaded(piece, 'near an edge', nearEdge, weight, near, all),
    pushed(context, piece),
  ];
}

/** A corner that tips at no less than this of another place is not named by itself. */
const WORSE = 0.99;

function pushed(context: CheckContext, piece: StandingPiece): TipCase {
  const force = context.loads.push;
  const tips = tipPush(piece, piece.height).force;
  return {
    name: 'when pushed',
    who: `a level push of ${sayForce(context, force)} at the top`,
    mass: force / GRAVITY,
    tipsAt: tips / GRAVITY,
    margin: tipMargin(piece, [], { force, height: piece.height }).margin,
    slidingMargin: tips / Math.min(force, slidePush(piece.weight, FLOOR_FRICTION.value.usual)),
    levers: SIDE_LEVERS,
  };
}

function loaded(
  piece: StandingPiece,
  name: string,
  who: string,
  mass: number,
  places: readonly Vec2[],
  levers: readonly string[],
): TipCase {
  const tipsAt = Math.min(...places.map((at) => tipLoad(piece, at).force)) / GRAVITY;
  const margin = Math.min(...places.map((at) => tipMargin(piece, [{ force: weightOf(mass), at }]).margin));
  return { name, who, mass, tipsAt, margin, slidingMargin: margin, levers };
}

/** Corners and middles of the edges, moved inwards. */
function ringInside({ box: { min, max } }: StandingPiece, by: Mm): Vec2[] {
  const [xs, ys] = [0, 1].map((k) => {
    const [low, high] = [min[k as 0 | 1], max[k as 0 | 1]];
    return [low + by, (low + high) / 2, high - by];
  }) as [number[], number[]];
  return xs.flatMap((x) => ys.map((y): Vec2 => [x, y]));
}

/** One person near an end, or two on the same half: whichever is worse. */
function sitting(context: CheckContext, piece: StandingPiece): TipCase {
  const { loads } = context;
  const { min, max } = piece.box;
  const { fromEnd, each } = SITTING.value;
  const y = (min[1] + max[1]) / 2;
  const length = max[0] - min[0];
  const from = (end: number, mm: Mm): Vec2 => [end === 0 ? min[0] + mm : max[0] - mm, y];
  const force = weightOf(loads.person);
  const margin = (places: readonly Vec2[]): number =>
    tipMargin(
      piece,
      places.map((at) => ({ force, at })),
    ).margin;
  const near = Math.min(fromEnd, length / 2);
  const settings = [0, 1].flatMap((end) => [
    [from(end, near)],
    ...(length >= 2 * each ? [[from(end, each / 2), from(end, (3 * each) / 2)]] : []),
  ]);
  const least = Math.min(...settings.map(margin));
  return {
    name: 'when sat on',
    who: `someone of ${sayMass(context, loads.person)} sitting near an end`,
    mass: loads.person,
    tipsAt: Math.min(...[0, 1].map((end) => tipLoad(piece, from(end, near)).force)) / GRAVITY,
    margin: least,
    slidingMargin: least,
    levers: END_LEVERS,
  };
}
