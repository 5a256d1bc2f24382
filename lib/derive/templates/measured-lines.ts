import type { UnitSystem } from '../../units/format-length.ts';
import type { FaceOutlines } from './face-view.ts';
import { lengthText } from './length-text.ts';
import { offsetsOf } from './offsets.ts';

/** How far the scribed edge is from where it was designed; nothing when the underside was not measured or is as designed. */
export function measuredLines(outlines: FaceOutlines, units: UnitSystem): string[] {
  const most = greatestChange(outlines, units);
  if (most === undefined) return [];
  const size = lengthText(Math.abs(most), units);
  return [
    `follows the underside as measured; it is up to ${size} ${most > 0 ? 'higher' : 'lower'} than designed (see the offsets)`,
  ];
}

/** mm, positive where the edge is higher now; over all stations the one that is furthest from nothing. */
export function greatestChange(outlines: FaceOutlines, units: UnitSystem): number | undefined {
  if (!outlines.designed) return undefined;
  const changes = offsetsOf(outlines, units).stations.flatMap(({ left, right }) =>
    [left, right].flatMap(({ near, designed }) =>
      near === undefined || designed === undefined ? [] : [near - designed],
    ),
  );
  return changes.reduce((most, change) => (Math.abs(change) > Math.abs(most) ? change : most), 0);
}
