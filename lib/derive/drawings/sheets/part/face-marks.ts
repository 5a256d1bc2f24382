import type { Entity } from '../../../../drawing/drawing.ts';
import type { Pt } from '../../../../drawing/entity.ts';
import { roomFor } from '../../../../drawing/fit-text.ts';
import { LAYERS } from '../../../../drawing/layers.ts';
import type { Style } from '../../../../drawing/style.ts';
import type { Part } from '../../../../model/part.ts';
import { newSheet } from '../../../templates/sheet.ts';
import { viewEntities } from '../../view-entities.ts';
import type { PartView } from './part-views.ts';

/** Size of a reference mark and of the arrow along the grain, paper mm: our convention. */
const MARK = 3;
const ARROW = { long: 26, short: 16, head: 2 } as const;
const WORD = 'grain';

/** The marks that are pencilled on a reference face: a V on the reference edge and the reference end, an arrow along the grain. */
export function faceMarks(part: Part, view: PartView, style: Style): Entity[] {
  const marks = referenceMarks(part, view, style);
  return [...marks, ...grainArrow(view, marks, style)];
}

/** Where the marks stand, as a share of the side; our convention. */
const PLACE = 0.12;

/** A top and its boards have no reference edge: their joints are laid out from the end and the show face. */
function referenceMarks({ body }: Part, view: PartView, { scale }: Style): Entity[] {
  const [width, height] = view.size;
  const size = Math.min(MARK * scale, height / 3, width / 3);
  const v = (tip: Pt, into: Pt): Entity => {
    const arm = (side: 1 | -1): Pt => [
      tip[0] + size * (into[0] + (side * into[1]) / 2),
      tip[1] + size * (into[1] + (side * into[0]) / 2),
    ];
    return { kind: 'poly', layer: LAYERS.REFERENCE, points: [arm(1), tip, arm(-1)], closed: false };
  };
  const [endX, edgeY] = [view.across.sign > 0 ? 0 : width, view.upward.sign > 0 ? 0 : height];
  const inwards = { x: endX === 0 ? 1 : -1, y: edgeY === 0 ? 1 : -1 } as const;
  return [
    ...(body.kind === 'prism' ? [v([endX + inwards.x * width * PLACE * 2, edgeY], [0, inwards.y])] : []),
    v([endX, edgeY + inwards.y * height * (0.5 - PLACE)], [inwards.x, 0]),
  ];
}

/** Where along a side the mark is tried, as shares of it: our convention. */
const TRIED = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];

/** A double arrow with the word over it, where there is room for it on the face; none on a narrow one. */
function grainArrow(view: PartView, marks: readonly Entity[], style: Style): Entity[] {
  const { scale, textHeight } = style;
  const [width, height] = view.size;
  const sheet = newSheet(style);
  sheet.put(...viewEntities(view.lines), ...marks);
  const wide = roomFor(WORD, textHeight);
  for (const length of [ARROW.long, ARROW.short]) {
    for (const share of TRIED) {
      for (const up of [0.5, 0.35, 0.65, 0.25, 0.75]) {
        const [x, y] = [width * share, height * up];
        const half = (Math.max(length, wide) / 2 + 1.5) * scale;
        const [low, high] = [y - 2 * scale, y + (textHeight * 1.5 + 3) * scale];
        const inside = x - half > 0 && x + half < width && low > 0 && high < height;
        if (!inside) continue;
        const clear = sheet.isClear([
          [x - half, low],
          [x + half, low],
          [x + half, high],
          [x - half, high],
        ]);
        if (clear) return arrow([x, y], length, style);
      }
    }
  }
  return [];
}

function arrow([x, y]: Pt, length: number, { scale, textHeight }: Style): Entity[] {
  const at = (dx: number, dy: number): Pt => [x + dx * scale, y + dy * scale];
  const tip = length / 2;
  const { head } = ARROW;
  return [
    {
      kind: 'poly',
      layer: LAYERS.REFERENCE,
      points: [at(head - tip, head / 2), at(-tip, 0), at(tip, 0), at(tip - head, head / 2)],
      closed: false,
    },
    { kind: 'text', layer: LAYERS.REFERENCE, text: WORD, at: at(0, 1.8), height: textHeight, align: 'center' },
  ];
}
