import { facetOutline, type Outline } from '../../lib/geometry/outline.ts';
import { add, cross, scale, type Vec2, type Vec3 } from '../../lib/geometry/vec.ts';
import type { BodyKind, Body as PartBody } from '../../lib/model/body.ts';
import { type EdgeProfile, isEdgeProfile, isPocket, type Pocket } from '../../lib/model/feature.ts';
import type { Part } from '../../lib/model/part.ts';
import { type Body, box, extrude, placed, subtract, trim } from './kernel.ts';
import { panelSpaces, sliceSpaces } from './panel-spaces.ts';

type Blank<K extends BodyKind> = (body: Extract<PartBody, { kind: K }>, profiles: readonly EdgeProfile[]) => Body;

const BLANKS: { readonly [K in BodyKind]: Blank<K> } = {
  prism(body) {
    if (body.far) throw new Error('a prism with a bevelled cut is not built here');
    return extrude(polygonOf(body.outline), body.thickness);
  },
  bar: (body) =>
    placed(extrude(polygonOf(body.profile, 45), body.length), { origin: [0, 0, 0], x: [0, 1, 0], y: [0, 0, 1] }),
  panel: (body, profiles) => trim(stock(body), panelSpaces(body, profiles)),
  slice: (body) => trim(stock(body.of), [...sliceSpaces(body), ...panelSpaces(body.of, body.profiles)]),
};

/** Arcs are compared as the chords that the library draws; how near these are to the arc is a test of its own. */
const polygonOf = (outline: Outline, degrees?: number): Vec2[] =>
  facetOutline(outline, degrees).map(({ x, y }): Vec2 => [x, y]);

/** Deep enough for any top. */
const stock = ({ length, width }: { readonly length: number; readonly width: number }): Body =>
  placed(box(length, width, 1000), { origin: [0, -width / 2, 0], x: [1, 0, 0], y: [0, 1, 0] });

/** The blank of a part, built by the kernel from closed form: extrusions and half-spaces. */
export const blankByBoolean = (part: Part): Body =>
  (BLANKS[part.body.kind] as Blank<BodyKind>)(part.body as never, part.features.filter(isEdgeProfile));

/** The finished part, built by the kernel: the blank less one cutter for each pocket. */
export const booleanOf = (part: Part): Body =>
  subtract(blankByBoolean(part), part.features.filter(isPocket).map(cutterOf));

/** How far a cutter stands out of the mouth, mm; and how far it goes when the pocket goes right through. */
const OVERSHOOT = 1;
const THROUGH = 1000;

/** A pocket as a body that stands out of its mouth. */
export function cutterOf(pocket: Pocket): Body {
  const n = pocket.into;
  const along: Vec3 = pocket.kind === 'bore' ? anAxisSquareTo(n) : pocket.along;
  const depth = pocket.depth === 'through' ? THROUGH : pocket.depth;
  return placed(extrude(section(pocket), depth + OVERSHOOT), {
    origin: add(pocket.at, scale(n, -OVERSHOOT)),
    x: along,
    y: cross(n, along),
  });
}

const anAxisSquareTo = (n: Vec3): Vec3 =>
  (
    [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ] as const
  ).find((axis) => Math.abs(n[0] * axis[0] + n[1] * axis[1] + n[2] * axis[2]) < 1e-9)!;

/** A rectangle, or a slot whose ends are half an octagon with its corners on the circle. */
function section(pocket: Pocket): Vec2[] {
  const [length, width] = pocket.kind === 'bore' ? [pocket.diameter, pocket.diameter] : [pocket.length, pocket.width];
  const [s, r] = [length / 2, width / 2];
  if (pocket.kind === 'mortise' && pocket.ends === 'square')
    return [
      [-s, -r],
      [s, -r],
      [s, r],
      [-s, r],
    ];
  const h = Math.SQRT1_2 * r;
  const end: readonly Vec2[] = [
    [0, -r],
    [h, -h],
    [r, 0],
    [h, h],
    [0, r],
  ];
  const straight = s - r;
  const points = [...end.map(([x, y]): Vec2 => [x + straight, y]), ...end.map(([x, y]): Vec2 => [-x - straight, -y])];
  return straight > 0 ? points : points.filter((_, k) => k !== 4 && k !== 9);
}
