import {
  board,
  choice,
  composition,
  defineDesign,
  defineParams,
  type Frame,
  group,
  length,
  looseTenonJoint,
  SPECIES_IDS,
  stretcher,
} from 'tablewright';

/** A low stool put together by hand from part and joint functions: seat, two sides, a stretcher, loose tenons. */
const params = defineParams(
  {
    seat: group('Seat', {
      length: length({ label: 'length', default: '18 in', min: '8 in', max: '6 ft' }),
      width: length({ label: 'width', default: '10 in', min: '5 in', max: '20 in' }),
      thickness: length({ label: 'thickness', default: '1 1/4 in', min: '3/4 in', max: '2 1/2 in' }),
      wood: choice({ label: 'wood', options: SPECIES_IDS, default: 'white-ash' }),
    }),
    side: group('Sides', {
      height: length({ label: 'height', default: '15 in', min: '4 in', max: '30 in' }),
      width: length({ label: 'width', default: '8 1/2 in', min: '4 in', max: '20 in' }),
      thickness: length({ label: 'thickness', default: '1 1/4 in', min: '3/4 in', max: '3 in' }),
      inset: length({ label: 'end of the seat to the middle of a side', default: '3 in', min: '3/4 in', max: '2 ft' }),
    }),
    stretcher: group('Stretcher', {
      width: length({ label: 'width', default: '3 in', min: '2 in', max: '8 in' }),
      thickness: length({ label: 'thickness', default: '1 in', min: '3/4 in', max: '2 in' }),
      height: length({ label: 'middle over the floor', default: '7 in', min: '1 in', max: '28 in' }),
    }),
    tenon: group('Loose tenons', {
      thickness: length({ label: 'thickness', default: '3/8 in', min: '3 mm', max: '1/2 in' }),
      width: length({ label: 'width', default: '1 1/2 in', min: '14 mm', max: '1 3/4 in' }),
      depth: length({ label: 'mortise depth', default: '3/4 in', min: '8 mm', max: '2 in' }),
    }),
  },
  [
    {
      fields: ['tenon.depth', 'side.thickness', 'seat.thickness'],
      check: ({ tenon, side, seat }) => {
        const max = Math.min(side.thickness, seat.thickness) - 6;
        return tenon.depth > max
          ? { path: 'tenon.depth', max, because: 'the mortise must leave 6 mm of seat and side' }
          : undefined;
      },
    },
    {
      fields: ['side.width', 'seat.width'],
      check: ({ side, seat }) =>
        side.width > seat.width
          ? { path: 'side.width', max: seat.width, because: 'the upper limit is seat.width' }
          : undefined,
    },
    {
      fields: ['side.inset', 'side.thickness', 'seat.length'],
      check: ({ side, seat }) => {
        const [min, max] = [side.thickness / 2, seat.length / 2 - side.thickness];
        return side.inset < min || side.inset > max
          ? { path: 'side.inset', min, max, because: 'both sides must stand under the seat, apart from each other' }
          : undefined;
      },
    },
    {
      fields: ['stretcher.height', 'stretcher.width', 'side.height'],
      check: ({ stretcher: s, side }) => {
        const [min, max] = [s.width / 2, side.height - s.width / 2];
        return s.height < min || s.height > max
          ? { path: 'stretcher.height', min, max, because: 'the stretcher must lie between floor and seat' }
          : undefined;
      },
    },
  ],
);

export default defineDesign({
  title: 'Reading-room stool',
  number: '12b',
  revision: 'A',
  date: '2026-11-25',
  units: 'in',
  params,
  values: {},
  compose({ seat, side, stretcher: s, tenon }, title) {
    const c = composition(title);
    const wood = seat.wood;
    let tenons = 0;
    const mark = (): string => {
      tenons += 1;
      return `N${tenons}`;
    };
    const size = { ...tenon, depthPlay: 1.5, endPlay: 0.5, edges: 'round' as const };

    // x along the seat, y across from its middle, z up from the floor. The seat lies with its reference face up.
    const top = c.place(board({ kind: 'seat', name: 'seat', id: 'seat', mark: 'A', ...seat }), {
      origin: [0, seat.width / 2, side.height + seat.thickness],
      x: [1, 0, 0],
      y: [0, -1, 0],
    });

    const inner = seat.length - 2 * side.inset - side.thickness;
    const rail = c.place(
      stretcher({ id: 'stretcher', mark: 'C', wood, length: inner, width: s.width, thickness: s.thickness }),
      {
        origin: [side.inset + side.thickness / 2, s.thickness / 2, s.height - s.width / 2],
        x: [1, 0, 0],
        y: [0, 0, 1],
      },
    );

    for (const [k, x] of [side.inset, seat.length - side.inset].entries()) {
      const id = `side-${k + 1}`;
      const outward = k === 0 ? -1 : 1;
      const upright = c.place(
        board({
          kind: 'side',
          name: 'side',
          id,
          mark: `B${k + 1}`,
          wood,
          length: side.height,
          width: side.width,
          thickness: side.thickness,
        }),
        // Reference faces look outward: grain up, z into the wood.
        {
          origin: [x + (outward * side.thickness) / 2, (-outward * side.width) / 2, 0],
          x: [0, 0, 1],
          y: [0, outward, 0],
        },
      );
      const under = (y: number): Frame => ({ origin: [x, y, side.height], x: [0, 0, 1], y: [0, 1, 0] });
      c.join(
        looseTenonJoint({
          id: `${id}/seat`,
          kind: 'frame',
          between: [upright, top],
          spots: [under(-side.width / 4), under(side.width / 4)],
          tenon: size,
          wood,
          mark,
          glueArea: side.width * side.thickness,
          cut: `${id}-seat`,
        }),
      );
      const shoulder = x - (outward * side.thickness) / 2;
      c.join(
        looseTenonJoint({
          id: `stretcher/${id}`,
          kind: 'frame',
          between: [rail, upright],
          spots: [{ origin: [shoulder, 0, s.height], x: [outward, 0, 0], y: [0, 0, 1] }],
          tenon: size,
          wood,
          mark,
          glueArea: s.width * s.thickness,
          cut: `stretcher-${id}`,
        }),
      );
    }
    return c.done();
  },
});
