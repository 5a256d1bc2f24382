import type { Vec2 } from '../../../geometry/vec.ts';
import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';
import { type Figure, ours } from './ours.ts';
import { insideOf, type TipLine, tipLines } from './tip-hull.ts';

/** Margin from which a piece stands well, and from which it stands at all. */
export const TIP_LIMITS: Figure<{ readonly ok: number; readonly least: number }> = ours(
  { ok: 1.5, least: 1 },
  'our convention',
);

/** What stands, and on what: push until a foot lifts (method of ISO 7172:1988, read in excerpt). */
export interface Standing {
  /** mm in the plan: middles of pads, or the center line of a foot without them. */
  readonly contacts: readonly Vec2[];
  /** mm in the plan. */
  readonly center: Vec2;
  /** N. */
  readonly weight: number;
}

/** A load straight down, N, at a point of the plan in mm. */
export interface DownLoad {
  readonly force: number;
  readonly at: Vec2;
}

/** A level push, N, at a height over the floor; without a direction in the plan, whichever is worst. */
export interface LevelPush {
  readonly force: number;
  readonly height: Mm;
  readonly toward?: Vec2;
}

/** How far a piece is from tipping. */
export interface TipMargin {
  /** What holds it down over what tips it; above 1 it stands, Infinity when nothing tips it. */
  readonly margin: number;
  /** Over which line it goes first. */
  readonly line: TipLine;
}

/**
 * For each line of the hull [W d_g + ΣF max(-d_f, 0)] / [ΣF max(d_f, 0) + H z], d_g the center of gravity inside it and
 * d_f a load outside it; the least counts. A center of gravity outside the line tips too.
 */
export function tipMargin(piece: Standing, down: readonly DownLoad[], push?: LevelPush): TipMargin {
  const all = tipLines(piece.contacts).map((line) => ({ line, margin: marginOver(line, piece, down, push) }));
  return all.reduce((worst, next) => (next.margin < worst.margin ? next : worst));
}

function marginOver(line: TipLine, piece: Standing, down: readonly DownLoad[], push?: LevelPush): number {
  let holds = 0;
  let tips = 0;
  const add = (moment: number): void => {
    if (moment >= 0) holds += moment;
    else tips -= moment;
  };
  add(positive('weight', piece.weight, ' N') * insideOf(line, piece.center));
  for (const { force, at } of down) add(force * insideOf(line, at));
  if (push) add(-push.force * push.height * across(line, push.toward));
  if (holds === 0) return 0;
  return tips === 0 ? Infinity : holds / tips;
}

function across({ outward }: TipLine, toward?: Vec2): number {
  if (!toward) return 1;
  return (toward[0] * outward[0] + toward[1] * outward[1]) / positive('direction', Math.hypot(...toward), '');
}

/** A force that just tips a piece, N; Infinity when none does. */
export interface TipForce {
  readonly force: number;
  readonly line: TipLine;
}

/** The load straight down at a point that lifts a foot: W d_g / d_f. */
export function tipLoad(piece: Standing, at: Vec2): TipForce {
  return leastForce(piece, (line) => -insideOf(line, at));
}

/** The level push at a height that lifts a foot, in the worst direction: W d_g / z. */
export function tipPush(piece: Standing, height: Mm): TipForce {
  return leastForce(piece, () => positive('height', height, ' mm'));
}

function leastForce({ contacts, center, weight }: Standing, lever: (line: TipLine) => Mm): TipForce {
  const all = tipLines(contacts).map((line) => {
    const arm = lever(line);
    return { line, force: arm > 0 ? Math.max(0, (weight * insideOf(line, center)) / arm) : Infinity };
  });
  return all.reduce((least, next) => (next.force < least.force ? next : least));
}
