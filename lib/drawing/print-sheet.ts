import type { Mark, Pt } from './entity.ts';
import { GAUGE_LENGTH, gauge } from './gauge.ts';
import { LAYERS } from './layers.ts';
import { letterWidth } from './letter-width.ts';
import type { Page } from './page.ts';
import { EDGE, type Sheet, windowOn } from './tile-grid.ts';
import { wrapText } from './wrap-text.ts';

/** Heights of letters on a sheet to print; paper mm, ours. */
const NAME = 5;
const WORDS = 2.2;
const SMALL = 1.9;

const PRINT =
  'Print at 100 %, not fitted to the page. Then measure both bars, across and up: this sheet is true only if they are.';

/** One line of text. */
export const textMark = (
  text: string,
  at: Pt,
  height: number,
  more: Partial<Extract<Mark, { kind: 'text' }>> = {},
): Mark => ({
  kind: 'text',
  layer: LAYERS.TEXT,
  text,
  at,
  height,
  ...more,
});

/** A height at which a line of text is no longer than there is room, the wanted one if it can be. */
export const fittingHeight = (text: string, room: number, height: number, bold = false): number =>
  height * Math.min(1, room / letterWidth(text, height, bold));

/** A sheet at full size with its name and words above, bars of 100 mm and 4 in in both directions, and what it shows. */
export function printSheet(sheet: Sheet, name: string, words: readonly [string, string], marks: readonly Mark[]): Page {
  const { min, max } = windowOn(sheet);
  const left = min[0] + letterWidth(name, NAME, true) + 4;
  const base = max[1] + 2;
  const beside = min[0] + GAUGE_LENGTH + 2;
  const print = wrapText(PRINT, max[0] - beside, SMALL);
  return {
    name,
    width: sheet.width,
    height: sheet.height,
    marks: [
      textMark(name, [min[0], base], NAME, { bold: true }),
      ...words.map((text, k) =>
        textMark(text, [left, base + (k === 0 ? 3.4 : 0)], fittingHeight(text, max[0] - left, WORDS)),
      ),
      ...gauge([min[0], EDGE + 1], 'across'),
      ...gauge([EDGE + 6.6, min[1]], 'up'),
      ...print.map((line, k) => textMark(line, [beside, EDGE + 5 - k * 1.5 * SMALL], SMALL)),
      ...marks,
    ],
  };
}
