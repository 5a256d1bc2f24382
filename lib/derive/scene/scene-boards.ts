import { toInner } from '../../geometry/frame.ts';
import type { Vec2 } from '../../geometry/vec.ts';
import { type Assembly, partOf, placeOf } from '../../model/assembly.ts';
import { isGlueUp, type Part } from '../../model/part.ts';
import type { Sawn } from '../../wood/ring-angle.ts';
import { chanceOf } from './hash.ts';
import type { SceneBoard } from './scene-data.ts';

/** A viewer makes room for so many boards in one glued part. */
export const MOST_BOARDS = 24;

/**
 * How the wood of a part lies. Strips of a top are sawn as the design says, with rings alternately up and down (common
 * practice, no source); other pieces are flat-sawn or rift, as it comes.
 *
 * @throws RangeError for a glued part of more than `MOST_BOARDS` boards.
 */
export function sceneBoards(assembly: Assembly, part: Part): SceneBoard[] {
  if (!isGlueUp(part)) return [boardOf(part, assembly.climate.sawn, [0, part.finished.width])];
  const frame = placeOf(assembly, part.id);
  const members = part.members
    .map((id) => ({ member: partOf(assembly, id), from: toInner(frame, placeOf(assembly, id).origin)[1] }))
    .sort((a, b) => a.from - b.from);
  if (members.length > MOST_BOARDS) {
    throw new RangeError(`${part.id} is glued from ${members.length} boards; a scene shows at most ${MOST_BOARDS}`);
  }
  return members.map(({ member, from }) =>
    boardOf(member, assembly.climate.sawn, [from, from + member.finished.width]),
  );
}

/** The board of one piece that reaches over these mm of y. */
function boardOf(part: Part, sawn: Sawn, [from, to]: Vec2): SceneBoard {
  const chance = (which: number): number => chanceOf(part.id, which);
  const { body, finished } = part;
  const [left, right] = body.kind === 'slice' ? [body.from, body.to] : [from, to];
  const isStrip = part.kind === 'strip';
  const angle = ringsAt(isStrip ? sawn : 'flat', chance(0), isStrip ? 12 : 35);
  const up = chance(1) < 0.5 ? -1 : 1;
  // The board comes from this far out in the tree, mm: a saw log of 400 to 600 mm (our convention).
  const out = 60 + 110 * chance(2);
  const middle: Vec2 = [(left + right) / 2 + (chance(3) - 0.5) * 0.5 * (right - left), finished.thickness / 2];
  const pith: Vec2 = [middle[0] + Math.sin(angle) * out, middle[1] + up * Math.cos(angle) * out];
  return { to: right, pith: [tenth(pith[0]), tenth(pith[1])], tone: tenth(20 * chance(4) - 10) / 10 };
}

const tenth = (value: number): number => Math.round(10 * value) / 10;

/** Angle between the rings and the wide face, radians, with up to `spread` degrees of luck. */
function ringsAt(sawn: Sawn, luck: number, spread: number): number {
  const degrees = sawn === 'flat' ? 0 : sawn === 'quarter' ? 90 : sawn.ringAngle;
  return ((degrees + (2 * luck - 1) * spread) * Math.PI) / 180;
}
