import { defineDesign } from '../../lib/build/design.ts';
import { composition } from '../../lib/model/composition.ts';
import { defineParams } from '../../lib/params/define-params.ts';
import { choice, count, flag, length } from '../../lib/params/fields.ts';
import { board } from '../../lib/parts/board.ts';
import { SPECIES_IDS } from '../../lib/wood/species-id.ts';

/** One plain board: everything about it can be worked out by hand. */
const params = defineParams(
  {
    length: length({ label: 'length', default: '1000 mm', min: '100 mm', max: '3 m' }),
    width: length({ label: 'width', default: '200 mm', min: '20 mm', max: '500 mm' }),
    thickness: length({ label: 'thickness', default: '20 mm', min: '5 mm', max: '80 mm' }),
    wood: choice({ label: 'wood', options: SPECIES_IDS, default: 'cherry' }),
    boards: count({ label: 'how many', default: 1, min: 1, max: 3 }),
    broken: flag({ label: 'cannot be put together', default: false }),
  },
  [
    {
      fields: ['thickness', 'width'],
      check: ({ thickness, width }) =>
        thickness > width / 5
          ? { path: 'thickness', max: width / 5, because: 'a board is five times as wide as thick' }
          : undefined,
    },
  ],
);

export const plank = defineDesign({
  title: 'Plank',
  revision: 'A',
  date: '2026-01-02',
  units: 'mm',
  params,
  values: {},
  compose({ broken, boards, ...size }, title) {
    if (broken) throw new RangeError('it is broken');
    const c = composition(title);
    for (let k = 0; k < boards; k++) {
      c.place(board({ kind: 'stretcher', id: `board-${k + 1}`, mark: `S${k + 1}`, ...size }), {
        origin: [0, k * size.width, 0],
        x: [1, 0, 0],
        y: [0, 1, 0],
      });
    }
    return c.done();
  },
});
