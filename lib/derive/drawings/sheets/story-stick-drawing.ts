import { placeBlock } from '../../../drawing/arrange.ts';
import { baseline } from '../../../drawing/baseline.ts';
import type { Block } from '../../../drawing/block.ts';
import type { Linear } from '../../../drawing/dim.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { Pt } from '../../../drawing/entity.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import { levelAt, levelDim } from '../../../drawing/stack.ts';
import type { Style } from '../../../drawing/style.ts';
import type { Vec2 } from '../../../geometry/vec.ts';
import type { Mm } from '../../../units/mm.ts';
import type { StickJoint, StickSlot, StoryStick } from './story-stick.ts';
import { viewBlock } from './view-block.ts';

/** Width of the lath, mm: common practice, no source. */
export const LATH: Mm = 32;

/** Between the two views, paper mm; our convention. */
const APART: Mm = 7;

/** Joints that differ by less are as thick as each other, mm. */
const SAME: Mm = 1e-6;

/** A stick with the running figures of its slots, and below it the thinnest joint face that it is laid on. */
export function stickViews(stick: StoryStick, style: Style): readonly [Block, Block] {
  const lath = viewBlock('The stick: tight slots above, long slots below', lathEntities(stick, style), style);
  const thin = stick.joints.reduce((a, b) => (b.thickness < a.thickness - SAME ? b : a));
  const name = `Joint ${thin.tight.mark}-${thin.long.mark}, the tight side as finished, show face up`;
  const face = viewBlock(name, faceEntities(stick, thin, style), style);
  return [lath, placeBlock.below(face, lath, APART * style.scale)];
}

const rectangle = (layer: Entity['layer'], [x0, x1]: Vec2, [y0, y1]: Vec2): Entity => ({
  kind: 'poly',
  layer,
  points: [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ],
  closed: true,
});

/** What sticks out of the lath over each slot, to carry its number; paper mm; our convention. */
const TICK: Mm = 1.5;

function lathEntities({ length, slots }: StoryStick, style: Style): Entity[] {
  const { scale } = style;
  const half = LATH / 2;
  const points = slots.map(({ middle }): Pt => [middle, LATH]);
  return [
    rectangle(LAYERS.OUTLINE, [0, length], [0, LATH]),
    ...slots.flatMap(({ middle, tight, long }, k): Entity[] => [
      rectangle(LAYERS.SLOT, tight, [half, LATH]),
      rectangle(LAYERS.SLOT, long, [0, half]),
      {
        kind: 'poly',
        layer: LAYERS.CENTER,
        points: [
          [middle, -TICK * scale],
          [middle, LATH],
        ],
        closed: false,
      },
      {
        kind: 'text',
        layer: LAYERS.TEXT,
        text: `${k + 1}`,
        at: [middle, -2 * TICK * scale],
        height: style.textHeight,
        align: 'center',
        valign: 'top',
        bold: true,
      },
    ]),
    ...baseline(points, [0, LATH], 'above', style).dims,
  ];
}

/** The joint face with its slots; over all, and what is gauged. */
function faceEntities(stick: StoryStick, { thickness }: StickJoint, style: Style): Entity[] {
  const { length, slots, gauge } = stick;
  const line = (y: Mm): Entity => ({
    kind: 'poly',
    layer: LAYERS.CENTER,
    points: [
      [0, -y],
      [length, -y],
    ],
    closed: false,
  });
  return [
    rectangle(LAYERS.OUTLINE, [0, length], [-thickness, 0]),
    line(gauge),
    ...slots.map((slot) => slotMark(slot, stick)),
    ...faceDims(stick, thickness, style),
  ];
}

/** As the cutter leaves it. */
function slotMark({ tight: [from, to] }: StickSlot, { gauge, width }: StoryStick): Entity {
  const r = width / 2;
  return {
    kind: 'poly',
    layer: LAYERS.SLOT,
    points: [
      [from + r, -gauge - r],
      [to - r, -gauge - r, 1],
      [to - r, -gauge + r],
      [from + r, -gauge + r, 1],
    ],
    closed: true,
  };
}

/** First and last slot from the finished ends, what lies between, over all; the gauge at the right, the thickness at the left. */
function faceDims({ length, slots, gauge }: StoryStick, thickness: Mm, style: Style): Linear[] {
  const low = -thickness;
  const [first, last] = [slots[0]!, slots.at(-1)!];
  const below = (from: Mm, to: Mm, level: number): Linear =>
    levelDim([from, low], [to, low], 'below', levelAt('below', low, level, style));
  const right = levelAt('right', length, 0, style);
  const left = levelAt('left', 0, 0, style);
  return [
    { ...below(0, first.tight[0], 0), placement: { text: 'before' } },
    ...(first === last ? [] : [below(first.tight[0], last.tight[1], 0)]),
    { ...below(last.tight[1], length, 0), placement: { text: 'after' } },
    below(0, length, 1),
    { ...levelDim([length, -gauge], [length, 0], 'right', right), placement: { text: 'after' } },
    { ...levelDim([0, low], [0, 0], 'left', left), placement: { text: 'after' } },
  ];
}
