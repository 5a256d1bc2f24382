import type { Entity } from '../../drawing/drawing.ts';
import type { Pt } from '../../drawing/entity.ts';
import { roomFor } from '../../drawing/fit-text.ts';
import { LAYERS } from '../../drawing/layers.ts';
import type { Style } from '../../drawing/style.ts';
import type { Mm } from '../../units/mm.ts';
import type { Balloon } from './balloons.ts';

/** Least radius, and white around the letters; paper mm; our convention. */
const LEAST: Mm = 3.4;
const WHITE: Mm = 0.7;

/** Half the width of the dot at the end of a leader, paper mm; our convention. */
const DOT: Mm = 0.55;

/** A circle that a mark has room in, paper mm. */
export const balloonRadius = (mark: string, { textHeight }: Style): Mm =>
  Math.max(LEAST, Math.hypot(roomFor(mark, textHeight) / 2, textHeight / 2) + WHITE);

/** Circle, mark, leader, and a dot on the piece. */
export function balloonMarks({ center, radius, tip }: Balloon, mark: string, { scale, textHeight }: Style): Entity[] {
  const reach = Math.hypot(tip[0] - center[0], tip[1] - center[1]);
  const start: Pt = [
    center[0] + ((tip[0] - center[0]) * radius) / reach,
    center[1] + ((tip[1] - center[1]) * radius) / reach,
  ];
  const dot = (turn: number): Entity => {
    const corner = (k: number): Pt => {
      const angle = turn + (k * Math.PI) / 2;
      return [tip[0] + Math.cos(angle) * DOT * scale, tip[1] + Math.sin(angle) * DOT * scale];
    };
    return { kind: 'solid', layer: LAYERS.DIMENSION, corners: [corner(0), corner(1), corner(2), corner(3)] };
  };
  return [
    { kind: 'circle', layer: LAYERS.DIMENSION, center, radius },
    { kind: 'poly', layer: LAYERS.DIMENSION, points: [start, tip], closed: false },
    dot(0),
    dot(Math.PI / 4),
    { kind: 'text', layer: LAYERS.TEXT, text: mark, at: center, height: textHeight, align: 'center', valign: 'middle' },
  ];
}
