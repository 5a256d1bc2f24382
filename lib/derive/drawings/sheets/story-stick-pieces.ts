import { OVERLAP } from '../../../drawing/tile-grid.ts';
import type { Vec2 } from '../../../geometry/vec.ts';
import type { Mm } from '../../../units/mm.ts';

/** From a seam to the next slot or figure, beyond the overlap; mm; our convention. */
const CLEAR: Mm = 2;

/**
 * Where a strip is parted so that every piece finds room on its paper: from and to of each piece, mm. Two neighbors show the
 * same `OVERLAP`; its middle is the seam. Seams keep clear of the rooms given, where that can be.
 *
 * @throws RangeError when there is no room for more than an overlap.
 */
export function stickPieces(length: Mm, rooms: readonly Vec2[], room: Mm): readonly Vec2[] {
  if (room <= 2 * OVERLAP) throw new RangeError(`pieces of ${room} mm are too short to overlap by ${OVERLAP} mm`);
  const half = OVERLAP / 2;
  const pieces: [Mm, Mm][] = [];
  let from = 0;
  while (length - from > room) {
    const seam = clearSeam(from + OVERLAP + half, from + room - half, rooms);
    pieces.push([from, seam + half]);
    from = seam - half;
  }
  return [...pieces, [from, length]];
}

/** The last clear place of a stretch; its end when there is none. */
function clearSeam(first: Mm, last: Mm, rooms: readonly Vec2[]): Mm {
  const off = OVERLAP / 2 + CLEAR;
  let seam = last;
  for (;;) {
    const hit = rooms.find(([from, to]) => seam > from - off + 1e-9 && seam < to + off - 1e-9);
    if (!hit) return seam;
    seam = hit[0] - off;
    if (seam < first) return last;
  }
}
