import type { LengthLook } from '../../../../drawing/style.ts';
import type { Vec3 } from '../../../../geometry/vec.ts';
import type { Pocket } from '../../../../model/feature.ts';
import type { Mm } from '../../../../units/mm.ts';
import { sayDim } from '../say-length.ts';
import { fromDatum } from './part-datum.ts';
import { type PartView, sideOf } from './part-views.ts';
import type { LetteredPockets } from './pocket-letters.ts';
import type { RunningStop } from './running-row.ts';

/** More mortises than this in a row are laid out by their middles, fewer by both ends: our convention. */
const BY_ENDS = 4;

/** Nearer than this is the same place, mm. */
const SAME: Mm = 1e-3;

/** Whether mortises are dimensioned to both ends, or to their middles where they are many. */
export const isByEnds = (kinds: readonly LetteredPockets[]): boolean => {
  const mortises = kinds.flatMap(({ pockets }) => pockets).filter(({ kind }) => kind === 'mortise');
  return mortises.filter((pocket) => sideOf(pocket) === sideOf(mortises[0]!)).length <= BY_ENDS;
};

/** Where a pocket is along an axis of its part: its middle, or both ends of a mortise along its length. */
function placesOf(pocket: Pocket, axis: 0 | 1 | 2, byEnds: boolean): Mm[] {
  const middle = pocket.at[axis];
  if (!byEnds || pocket.kind !== 'mortise' || Math.abs(pocket.along[axis]) < 0.5) return [middle];
  return [middle - pocket.length / 2, middle + pocket.length / 2];
}

/** The running dimensions of the pockets of a view along one axis of its part, from the datum; none when there are none. */
export function viewStops(
  view: PartView,
  axis: 0 | 1 | 2,
  kinds: readonly LetteredPockets[],
  datum: Vec3,
  look: LengthLook,
): RunningStop[] {
  const byEnds = isByEnds(kinds);
  const found = kinds.flatMap(({ letter, pockets }) =>
    pockets
      .filter((pocket) => sideOf(pocket) === view.side)
      .flatMap((pocket) => placesOf(pocket, axis, byEnds).map((at) => ({ letter, at }))),
  );
  if (found.length === 0) return [];
  const many = new Set(found.map(({ letter }) => letter)).size;
  const name = (letters: readonly string[]): string =>
    letters.length === many && many > 2 ? 'all' : letters.join(', ');
  const stops: { at: Mm; letters: string[] }[] = [];
  for (const { letter, at } of found) {
    const known = stops.find((stop) => Math.abs(stop.at - at) < SAME);
    if (!known) stops.push({ at, letters: [letter] });
    else if (!known.letters.includes(letter)) known.letters.push(letter);
  }
  const say = (mm: Mm): string => (mm < SAME ? '0' : sayDim(mm, look));
  const onSheet = (at: Mm): Mm => {
    const point: Vec3 = [axis === 0 ? at : datum[0], axis === 1 ? at : datum[1], axis === 2 ? at : datum[2]];
    return view.toSheet(point)[view.across.axis === axis ? 0 : 1];
  };
  const from = onSheet(datum[axis]);
  return [
    ...(stops.some(({ at }) => Math.abs(at - datum[axis]) < SAME) ? [] : [{ at: from, from, text: '0' }]),
    ...stops.map(({ at, letters }) => ({
      at: onSheet(at),
      from,
      text: `${name(letters)}  ${say(fromDatum(datum, axis, at))}`,
    })),
  ];
}
