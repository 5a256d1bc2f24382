import type { Entity } from './drawing.ts';
import type { Pt } from './entity.ts';
import { LAYERS } from './layers.ts';
import type { ProjectionAngle } from './sheet.ts';

/** Diameters and length of the cone in heights of the symbol: 2 : 1 : 2 (ISO 5456-2, from memory). */
const SMALL = 0.5;
const LONG = 1;

/**
 * The sign for the projection: a cut-off cone with its narrow end to the left, and what one sees of it from the left. In
 * third angle that view stands to the left, in first angle to the right. Model mm: middle and height of the symbol.
 */
export function projectionSymbol(angle: ProjectionAngle, [x, y]: Pt, height: number): readonly Entity[] {
  const reach = height; // from the middle of the symbol to the middles of its two views
  const circles: Pt = angle === 'third' ? [x - reach * 0.75, y] : [x + reach * 0.75, y];
  const cone: Pt = angle === 'third' ? [x + reach * 0.75, y] : [x - reach * 0.75, y];
  const [half, narrow] = [(LONG * height) / 2, (SMALL * height) / 2];
  const past = height * 0.15;
  const axis = (a: Pt, b: Pt): Entity => ({ kind: 'poly', layer: LAYERS.CENTER, points: [a, b], closed: false });
  return [
    {
      kind: 'poly',
      layer: LAYERS.TEXT,
      closed: true,
      points: [
        [cone[0] - half, y - narrow],
        [cone[0] + half, y - height / 2],
        [cone[0] + half, y + height / 2],
        [cone[0] - half, y + narrow],
      ],
    },
    { kind: 'circle', layer: LAYERS.TEXT, center: circles, radius: height / 2 },
    { kind: 'circle', layer: LAYERS.TEXT, center: circles, radius: narrow },
    axis([cone[0] - half - past, y], [cone[0] + half + past, y]),
    axis([circles[0] - height / 2 - past, y], [circles[0] + height / 2 + past, y]),
    axis([circles[0], y - height / 2 - past], [circles[0], y + height / 2 + past]),
  ];
}
