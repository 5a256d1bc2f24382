import type { OutlinePoint } from '../../../../geometry/outline.ts';
import type { Vec3 } from '../../../../geometry/vec.ts';
import type { Body } from '../../../../model/body.ts';
import { isPocket, type Pocket } from '../../../../model/feature.ts';
import type { Part } from '../../../../model/part.ts';

/** Places and sizes that differ by less than this are one, mm: finer than anything that is worked. */
const SAME = 1e-3;

/** Half a turn of a part about each of its axes, and none: what can be done to a piece on the bench without changing it. */
const TURNS: readonly Vec3[] = [
  [1, 1, 1],
  [1, -1, -1],
  [-1, 1, -1],
  [-1, -1, 1],
];

const digits = (value: number): number => Math.round(value / SAME) + 0;

/** The same text for parts that are one shape, edge names and ids aside, as they lie or turned over by `turn`. */
function shapeText({ body, features, finished }: Part, turn: Vec3): string | undefined {
  const { length, width, thickness } = finished;
  const size: Vec3 = [length, width, thickness];
  const place = (p: Vec3): number[] => p.map((v, k) => digits(turn[k]! > 0 ? v : size[k]! - v));
  const away = (d: Vec3): number[] => d.map((v, k) => digits(v * turn[k]!));
  const shape = bodyText(body, turn, place);
  if (shape === undefined) return undefined;
  const pockets = features.filter(isPocket).map((pocket) => JSON.stringify(pocketText(pocket, place, away)));
  const profiles = features.filter((f) => !isPocket(f)).map(({ id: _, ...rest }) => JSON.stringify(rest));
  return JSON.stringify([shape, pockets.sort(), profiles]);
}

/** A length has no head and no tail. */
const unsigned = (d: readonly number[]): number[] =>
  (d.find((v) => v !== 0) ?? 0) < 0 ? d.map((v) => -v + 0) : [...d];

function pocketText(pocket: Pocket, place: (p: Vec3) => number[], away: (d: Vec3) => number[]): unknown {
  const deep = pocket.depth === 'through' ? 'through' : digits(pocket.depth);
  const mouth = [pocket.kind, place(pocket.at), away(pocket.into), deep];
  if (pocket.kind === 'bore') return [...mouth, pocket.purpose, digits(pocket.diameter)];
  const sort = pocket.kind === 'mortise' ? pocket.ends : pocket.purpose;
  return [...mouth, sort, unsigned(away(pocket.along)), digits(pocket.length), digits(pocket.width)];
}

/** Undefined for a body that is not turned over: only a plain prism is. */
function bodyText(body: Body, turn: Vec3, place: (p: Vec3) => number[]): unknown {
  if (body.kind === 'prism' && body.far === undefined) return [digits(body.thickness), segmentsOf(body.outline, place)];
  if (turn[0] < 0 || turn[1] < 0) return undefined;
  return body.kind === 'prism'
    ? [digits(body.thickness), segmentsOf(body.outline, place), segmentsOf(body.far!, place)]
    : JSON.stringify(body);
}

/** Each side of an outline by itself: its ends in either order, and its bulge, which a turned face keeps. */
function segmentsOf(outline: readonly OutlinePoint[], place: (p: Vec3) => number[]): string[] {
  return outline
    .map((a, k) => {
      const b = outline[(k + 1) % outline.length]!;
      const ends = [a, b].map(({ x, y }) => place([x, y, 0]).slice(0, 2).join(' '));
      return [...ends.sort(), digits(a.bulge ?? 0)].join(', ');
    })
    .sort();
}

/** Whether a part is the same piece of wood as another: as it lies, turned over, or neither. */
export function alikeAs(part: Part, other: Part): 'as it lies' | 'turned' | undefined {
  const shape = shapeText(other, TURNS[0]!);
  const turn = TURNS.find((one) => shapeText(part, one) === shape);
  if (!turn) return undefined;
  return turn === TURNS[0] ? 'as it lies' : 'turned';
}
