import type { Mm } from '../units/mm.ts';
import type { Pt, Text } from './entity.ts';
import { letterWidth, TAIL } from './letter-width.ts';
import { along, polar } from './vec.ts';
import { wrapText } from './wrap-text.ts';

/** Screens letter an SVG in faces of their own, up to so much wider than that of the sheets: measured in DejaVu Sans. */
const OTHER_FACES = 1.16;

/** Length of a line of lettering that no usual face exceeds, in the unit of `height`. */
export const roomFor = (text: string, height: Mm, bold = false): Mm => letterWidth(text, height, bold) * OTHER_FACES;

const START = { left: 0, center: -0.5, right: -1 } as const;
const RISE = { baseline: 0, middle: -0.5, top: -1 } as const;

/** The four corners of the room that a lettering takes in any usual face, tails included; model mm. */
export function textRoom(text: Text, scale: number): readonly [Pt, Pt, Pt, Pt] {
  const { rotation = 0, align = 'left', valign = 'baseline' } = text;
  const height = text.height * scale;
  const width = roomFor(text.text, height, text.bold);
  const [ahead, up] = [polar(rotation), polar(rotation + 90)];
  const start = along(along(text.at, ahead, START[align] * width), up, (RISE[valign] - TAIL) * height);
  const end = along(start, ahead, width);
  return [start, end, along(end, up, (1 + TAIL) * height), along(start, up, (1 + TAIL) * height)];
}

/** What belongs together on one line: a whole number and its fraction, a number and its unit. */
const TOGETHER = /(\d) (?=\d+\/\d|mm\b|in\b|lb\b|kg\b|deg\b)/g;

/** A space that no line is broken at. */
const GLUE = '\u00a0';

/** Lines that are no longer than `width` in any usual face; a length is never broken. */
export const linesWithin = (text: string, width: Mm, height: Mm): readonly string[] =>
  wrapText(text.trim().replace(/\s+/g, ' ').replace(TOGETHER, `$1${GLUE}`), width / OTHER_FACES, height).map((line) =>
    line.replaceAll(GLUE, ' '),
  );

/** The first of some heights at which a text fits on one line; undefined when none does. Paper mm. */
export const heightThatFits = (text: string, heights: readonly Mm[], width: Mm): Mm | undefined =>
  heights.find((height) => roomFor(text, height) <= width);
