import { type Frame, within } from '../../lib/geometry/frame.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import { looseTenonJoint, plainJoint } from '../../lib/joints/loose-tenon-joint.ts';
import { screwFixing } from '../../lib/joints/screw-fixing.ts';
import type { Assembly, PlacedPart } from '../../lib/model/assembly.ts';
import { composition } from '../../lib/model/composition.ts';
import type { PartKind } from '../../lib/model/part.ts';
import { board } from '../../lib/parts/board.ts';
import { top } from '../../lib/parts/top.ts';
import type { SpeciesId } from '../../lib/wood/species-id.ts';

/** Tenons of all joints, mm: what a joint holds is not what these tables are for. */
const TENON = { thickness: 8, width: 30, depth: 20, depthPlay: 0, endPlay: 0, edges: 'round' } as const;

const SCREW = { gauge: 8, shank: 4.2, length: 40 } as const;

export type Size = readonly [length: number, width: number, thickness: number];

/** A table put together piece by piece, flat top first; x along it from the end of the top, y across, z up, mm. */
export interface HandTable {
  /** A square-edged piece in a frame of the table. */
  put(kind: PartKind, id: string, size: Size, frame: Frame): PlacedPart;
  /** Tenons at the shoulder of the first piece, into the second, wide along a direction. */
  join(first: PlacedPart, second: PlacedPart, at: Vec3, into: Vec3, along: Vec3, name?: string): void;
  /** One screw from below through a piece into the top. */
  screw(base: PlacedPart, at: Vec3): void;
  /** A pad 1 mm thick under a piece. */
  pad(over: PlacedPart, x: number, y: number): void;
  done(): Assembly;
}

export function handTable(height: number, size: Size, wood: SpeciesId = 'cherry'): HandTable {
  const [length, width, thickness] = size;
  const c = composition('Table by hand');
  let marks = 0;
  const mark = (): string => {
    marks += 1;
    return `X${marks}`;
  };
  const panel = c.place(
    top({ id: 'top', mark: 'T', wood, length, width, thickness, edgeThickness: thickness, members: [] }),
    { origin: [0, 0, height], x: [1, 0, 0], y: [0, -1, 0] },
  );
  return {
    put: (kind, id, [l, w, t], frame) =>
      c.place(board({ kind, name: kind, id, mark: mark(), wood, length: l, width: w, thickness: t }), frame),
    join(first, second, at, into, along, name = '') {
      const id = `${first.part.id}/${second.part.id.replaceAll('/', '-')}${name && `-${name}`}`;
      const spots = [{ origin: at, x: into, y: along }];
      c.join(
        looseTenonJoint({
          id,
          kind: 'frame',
          between: [first, second],
          spots,
          tenon: TENON,
          wood,
          mark,
          glueArea: 1000,
          cut: id.replaceAll('/', '-'),
        }),
      );
    },
    screw(base, at) {
      c.fix(
        screwFixing({
          id: `${base.part.id}/screw`,
          base,
          into: panel,
          at,
          direction: [0, 0, 1],
          through: height - thickness - at[2],
          screw: SCREW,
          washer: 10,
          pilot: 3,
          penetration: 5,
          fromCenter: 0,
          cut: `${base.part.id.replaceAll('/', '-')}-screw`,
        }),
      );
    },
    pad(over, x, y) {
      const id = `pad-${mark().toLowerCase()}`;
      const frame: Frame = { origin: [x - 20, y - 20, 0], x: [1, 0, 0], y: [0, 1, 0] };
      const under = c.place(
        board({ kind: 'pad', name: 'pad', id, mark: mark(), wood, length: 40, width: 40, thickness: 1 }),
        frame,
      );
      c.join(plainJoint(`${over.part.id}/${id}`, 'pad', [over, under], 1600));
    },
    done: () => c.done(),
  };
}

/** The elevation of a frame that stands at x: y of the table, up, along the table. */
export const elevation = (x: number): Frame => ({ origin: [x, 0, 0], x: [0, 1, 0], y: [0, 0, 1] });

/** A piece that stands on its end: its middle at x and y, its width across the table. */
export const standing = ([, width, thickness]: Size, x: number, y: number, up: number): Frame =>
  within(elevation(x), { origin: [y + width / 2, up, -thickness / 2], x: [0, 1, 0], y: [-1, 0, 0] });

/** A piece that lies across the table on its edge: its middle at x and y. */
export const across = ([length, , thickness]: Size, x: number, y: number, up: number): Frame =>
  within(elevation(x), { origin: [y - length / 2, up, -thickness / 2], x: [1, 0, 0], y: [0, 1, 0] });

/** A piece that lies along the table on its edge, from x on, its middle at y. */
export const lengthwise = ([, , thickness]: Size, x: number, y: number, up: number): Frame => ({
  origin: [x, y + thickness / 2, up],
  x: [1, 0, 0],
  y: [0, 0, 1],
});
