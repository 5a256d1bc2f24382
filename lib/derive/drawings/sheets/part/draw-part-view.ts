import { baseline } from '../../../../drawing/baseline.ts';
import { type Block, block } from '../../../../drawing/block.ts';
import type { Dim } from '../../../../drawing/dim.ts';
import type { Entity } from '../../../../drawing/drawing.ts';
import type { Pt } from '../../../../drawing/entity.ts';
import { LAYERS } from '../../../../drawing/layers.ts';
import { SIDES as STACKS, type StackSide } from '../../../../drawing/stack.ts';
import type { LengthLook, Style } from '../../../../drawing/style.ts';
import type { Mm } from '../../../../units/mm.ts';
import { viewEntities } from '../../view-entities.ts';
import { sayDim } from '../say-length.ts';
import { exact } from './exact.ts';
import type { PartView } from './part-views.ts';
import { type RunningStop, runningRow } from './running-row.ts';

/**
 * What stands on one side of a view: a running row with its corners among them, or
 * dimensions of its shape where there is none. */
export interface SideDims {
  readonly stops: readonly RunningStop[];
  readonly points: readonly Pt[];
  readonly datum: Pt;
}

/**
 * Height of the name of a view, and its distance from what is above it; paper mm; 3.5 is of the series of ISO 3098-1,
 * the distance our convention.
 */
const NAME: Mm = 3.5;
const UNDER: Mm = 3;

/** Nearer than this is the same place, mm. */
const SAME: Mm = 1e-6;

/** A view with its name and what is measured on each side of it. */
export function drawPartView(
  name: string,
  view: PartView,
  sides: { readonly [S in StackSide]?: SideDims },
  marks: readonly Entity[],
  look: LengthLook,
  style: Style,
): Block {
  const [width, height] = view.size;
  const edges: { readonly [S in StackSide]: Mm } = { above: height, below: 0, left: 0, right: width };
  const entities = (Object.keys(sides) as StackSide[]).flatMap((side): Entity[] => {
    const { stops, points, datum } = sides[side]!;
    const { axis } = STACKS[side];
    const edge = edges[side];
    const away = points.filter((p) => Math.abs(p[axis] - datum[axis]) > SAME);
    if (stops.length === 0) return away.length > 0 ? shapeDims(away, datum, side, edge, look, style) : [];
    const from = datum[axis];
    const plain = away.map((p) => ({
      at: p[axis],
      from,
      text: sayDim(Math.abs(p[axis] - datum[axis]), style.lengths),
    }));
    const added = plain.filter(({ at }, k) =>
      [...stops, ...plain.slice(0, k)].every((s) => Math.abs(s.at - at) > SAME),
    );
    return runningRow([...stops, ...added], edge, side, style);
  });
  const bare = block([...viewEntities(view.lines), ...marks, ...entities], style);
  const label: Entity = {
    kind: 'text',
    layer: LAYERS.TEXT,
    text: name,
    at: [width / 2, bare.box.min[1] - UNDER * style.scale],
    height: NAME,
    align: 'center',
    valign: 'top',
    bold: true,
  };
  return block([...bare.entities, label], style);
}

/** Dimensions from the datum; they letter lengths in a look of their own where that of the sheet is too plain. */
function shapeDims(points: readonly Pt[], datum: Pt, side: StackSide, edge: Mm, look: LengthLook, style: Style): Dim[] {
  const { axis } = STACKS[side];
  const { dims } = baseline(points, datum, side, { ...style, lengths: look }, { edge });
  if (look === style.lengths) return [...dims];
  return dims.map((dim) => ({ ...dim, text: sayDim(exact(Math.abs(dim.to[axis] - dim.from[axis])), look) }));
}
