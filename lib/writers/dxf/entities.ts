import { sides } from '../../drawing/bulge.ts';
import type { Arc, Circle, Mark, Poly, Solid, Text } from '../../drawing/entity.ts';
import type { Layer } from '../../drawing/layer.ts';
import { textStart } from '../../drawing/text-size.ts';
import type { Handles } from './handles.ts';
import { point, type Tag } from './tags.ts';
import { dxfText } from './text.ts';
import { dashFactor } from './weights.ts';

/** What all entities share. `owner` is the block record of the space or the block that they are in. */
export function entity(kind: string, layer: Layer, handles: Handles, owner: string): readonly Tag[] {
  const factor = dashFactor(layer);
  return [
    [0, kind],
    [5, handles.next()],
    [330, owner],
    [100, 'AcDbEntity'],
    [8, layer.name],
    ...(factor === 1 ? [] : [[48, factor] as Tag]),
  ];
}

type Body = readonly [kind: string, tags: readonly Tag[]];

/** Two points and nothing else are a LINE; anything longer, closed or curved a polyline. */
function poly(mark: Poly): Body {
  const { points, closed } = mark;
  const all = sides(mark);
  if (all.length === 0)
    throw new RangeError(`a polyline on ${mark.layer.name} has ${points.length} points; it needs two`);
  const [only] = all;
  if (all.length === 1 && only && only.bulge === 0) {
    return ['LINE', [[100, 'AcDbLine'], ...point(10, only.from), ...point(11, only.to)]];
  }
  const vertices = points.flatMap(([x, y, bulge = 0]): Tag[] => [
    [10, x],
    [20, y],
    [42, bulge],
  ]);
  return ['LWPOLYLINE', [[100, 'AcDbPolyline'], [90, points.length], [70, closed ? 1 : 0], [43, 0], ...vertices]];
}

const circle = (mark: Circle): Body => ['CIRCLE', [[100, 'AcDbCircle'], ...point(10, mark.center), [40, mark.radius]]];

const arc = (mark: Arc): Body => [
  'ARC',
  [
    [100, 'AcDbCircle'],
    ...point(10, mark.center),
    [40, mark.radius],
    [100, 'AcDbArc'],
    [50, turn(mark.start)],
    [51, turn(mark.end)],
  ],
];

/** From 0 up to 360. */
const turn = (angle: number): number => ((angle % 360) + 360) % 360;

/** The format wants the third and fourth corner crossed over; a triangle repeats its third. */
function solid(mark: Solid): Body {
  const [a, b, c, d] = mark.corners;
  return ['SOLID', [[100, 'AcDbTrace'], ...point(10, a), ...point(11, b), ...point(12, d ?? c), ...point(13, c)]];
}

const ALIGN = { left: 0, center: 1, right: 2 } as const;
const VALIGN = { baseline: 0, middle: 2, top: 3 } as const;

function text(mark: Text, scale: number): Body {
  const align = ALIGN[mark.align ?? 'left'];
  const valign = VALIGN[mark.valign ?? 'baseline'];
  return [
    'TEXT',
    [
      [100, 'AcDbText'],
      ...point(10, textStart(mark, scale)),
      [40, mark.height * scale],
      [1, dxfText(mark.text)],
      [50, turn(mark.rotation ?? 0)],
      [7, 'Standard'],
      [72, align],
      ...(align || valign ? point(11, mark.at) : []),
      [100, 'AcDbText'],
      [73, valign],
    ],
  ];
}

const BODIES: { readonly [K in Mark['kind']]: (mark: Extract<Mark, { kind: K }>, scale: number) => Body } = {
  poly,
  arc,
  circle,
  solid,
  text,
};

/** One mark as an entity of the file. */
export function markTags(mark: Mark, scale: number, handles: Handles, owner: string): readonly Tag[] {
  const [kind, tags] = (BODIES[mark.kind] as (mark: Mark, scale: number) => Body)(mark, scale);
  return [...entity(kind, mark.layer, handles, owner), ...tags];
}
