import { boundsOf } from '../../drawing/bounds.ts';
import { flatten } from '../../drawing/flatten.ts';
import type { Page } from '../../drawing/page.ts';
import { place } from '../../drawing/place.ts';
import { printSheet } from '../../drawing/print-sheet.ts';
import { type Sheet, windowOn } from '../../drawing/tile-grid.ts';
import type { Heading } from './heading.ts';
import { nameLine, revisionLine } from './note-lines.ts';
import type { Template } from './templates.ts';

/** White around the drawing, and the least size of a page, so that bars and words find room; mm; our convention. */
const WHITE = 5;
const LEAST = 220;

/** A template on one sheet from a roll, with everything that its drawing has. */
export function rollPage({ drawing, face }: Template, heading: Heading): Page {
  const { min, max } = boundsOf(flatten(drawing), 1)!;
  const probe: Sheet = { width: 1000, height: 1000 };
  const shown = windowOn(probe);
  const spare = [0, 1].map((axis) => 1000 - (shown.max[axis as 0] - shown.min[axis as 0]) + 2 * WHITE) as [
    number,
    number,
  ];
  const whole = (mm: number): number => Math.ceil(Math.max(LEAST, mm));
  const sheet: Sheet = { width: whole(max[0] - min[0] + spare[0]), height: whole(max[1] - min[1] + spare[1]) };
  const window = windowOn(sheet);
  const marks = place(drawing, [window.min[0] + WHITE - min[0], window.min[1] + WHITE - min[1]]);
  return printSheet(sheet, 'Roll', [nameLine(face), revisionLine(heading)], marks);
}
