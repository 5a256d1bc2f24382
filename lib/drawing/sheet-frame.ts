import type { Mm } from '../units/mm.ts';
import type { Box } from './bounds.ts';
import type { Entity } from './drawing.ts';
import { heightThatFits, linesWithin } from './fit-text.ts';
import { LAYERS } from './layers.ts';
import type { SheetHeading } from './sheet.ts';
import { TITLE_HEIGHT, TITLE_WIDTH, titleBlock } from './title-block.ts';

/** Frame, title block and warning of a sheet, and what is left free. Model mm, from the lower left corner of the paper. */
export interface SheetFrame {
  readonly entities: readonly Entity[];
  readonly area: Box;
  readonly strip: Box;
}

/** Between frame and content, paper mm: common practice, no source. */
const CLEAR: Mm = 5;

/** Heights of a warning, the first that fits: the series of ISO 3098-1. From line to line in heights: our convention. */
const WARNING_HEIGHTS = [3.5, 2.5, 1.8] as const;
const LEADING = 1.6;

export function sheetFrame(title: string, heading: SheetHeading, scale: number): SheetFrame {
  const { paper, warning } = heading;
  const { left, rest } = paper.margin;
  const [right, top] = [paper.width - rest, paper.height - rest];
  const alarm = warning === undefined ? undefined : warningLines(warning, right - left - 2 * CLEAR);
  const band = alarm ? (alarm.lines.length * LEADING + 0.6) * alarm.height : 0;
  const blockTop = rest + TITLE_HEIGHT;
  const at = (x: Mm, y: Mm): readonly [Mm, Mm] => [x * scale, y * scale];
  const box = (x0: Mm, y0: Mm, x1: Mm, y1: Mm): Box => ({ min: at(x0, y0), max: at(x1, y1) });
  const { min, max } = box(left, rest, right, top);
  const lines = (alarm?.lines ?? []).map(
    (text, k): Entity => ({
      kind: 'text',
      layer: LAYERS.WARNING,
      text,
      at: at(left + CLEAR, top - (k + 1) * LEADING * alarm!.height),
      height: alarm!.height,
    }),
  );
  return {
    entities: [
      { kind: 'poly', layer: LAYERS.FRAME, points: [min, [max[0], min[1]], max, [min[0], max[1]]], closed: true },
      ...titleBlock(title, heading, scale, at(right - TITLE_WIDTH, rest)),
      ...lines,
    ],
    area: box(left + CLEAR, blockTop + CLEAR, right - CLEAR, top - Math.max(CLEAR, band)),
    strip: box(left + CLEAR, rest + CLEAR / 2, right - TITLE_WIDTH - CLEAR, blockTop),
  };
}

/** On one line as large as fits, else on as many of the smallest as it takes. */
function warningLines(text: string, width: Mm): { readonly lines: readonly string[]; readonly height: Mm } {
  const height = heightThatFits(text, WARNING_HEIGHTS, width);
  return height === undefined ? { lines: linesWithin(text, width, 1.8), height: 1.8 } : { lines: [text], height };
}
