import type { Ink, Layer } from './layer.ts';

/** Wide and narrow lines, 2 : 1 (ISO 128-2); these two for a letter or A4 sheet from memory. */
export const WIDE = 0.5;
export const NARROW = 0.25;

/** For what must not stand out: the next width below, of the series of ISO 128-2. */
const THIN = 0.18;

/** Inks dark enough to print; the numbers are the DXF colors nearest to them. Which layer has which is ours. */
export const INKS = {
  black: { index: 7, rgb: '#000000' },
  red: { index: 1, rgb: '#b00020' },
  green: { index: 3, rgb: '#1b6e2d' },
  blue: { index: 5, rgb: '#1d3fa8' },
  violet: { index: 6, rgb: '#7a1f8a' },
  gray: { index: 8, rgb: '#606060' },
} as const satisfies Record<string, Ink>;

/** The layers of the shop's drawings. */
export const LAYERS = {
  /** Edges that are seen, and the line a template is cut to. */
  OUTLINE: { name: 'OUTLINE', width: WIDE, ink: INKS.black, linetype: 'CONTINUOUS' },
  /** The same in a picture that is to no scale. */
  PICTURE: { name: 'PICTURE', width: NARROW, ink: INKS.black, linetype: 'CONTINUOUS' },
  /** Edges behind wood. */
  HIDDEN: { name: 'HIDDEN', width: NARROW, ink: INKS.black, linetype: 'DASHED' },
  /** Cut faces of a section. */
  SECTION: { name: 'SECTION', width: WIDE, ink: INKS.black, linetype: 'CONTINUOUS' },
  HATCH: { name: 'HATCH', width: NARROW, ink: INKS.gray, linetype: 'CONTINUOUS' },
  /** Axes of bores and lines of symmetry. */
  CENTER: { name: 'CENTER', width: NARROW, ink: INKS.gray, linetype: 'CENTER' },
  MORTISE: { name: 'MORTISE', width: WIDE, ink: INKS.blue, linetype: 'CONTINUOUS' },
  TENON: { name: 'TENON', width: WIDE, ink: INKS.blue, linetype: 'CONTINUOUS' },
  BORE: { name: 'BORE', width: WIDE, ink: INKS.violet, linetype: 'CONTINUOUS' },
  SLOT: { name: 'SLOT', width: WIDE, ink: INKS.violet, linetype: 'CONTINUOUS' },
  /** Where the saw goes, outside the finished line. */
  'SAW-LINE': { name: 'SAW-LINE', width: NARROW, ink: INKS.red, linetype: 'DIVIDE' },
  /** The line taken from the underside of the top. */
  SCRIBE: { name: 'SCRIBE', width: NARROW, ink: INKS.red, linetype: 'CONTINUOUS' },
  /** Marks for a reference face, edge or end, and arrows along the grain. */
  REFERENCE: { name: 'REFERENCE', width: NARROW, ink: INKS.green, linetype: 'CONTINUOUS' },
  /** Outline of a part that is only shown to tell where this one sits. */
  NEIGHBOR: { name: 'NEIGHBOR', width: NARROW, ink: INKS.gray, linetype: 'DIVIDE' },
  DIMENSION: { name: 'DIMENSION', width: NARROW, ink: INKS.black, linetype: 'CONTINUOUS' },
  TEXT: { name: 'TEXT', width: NARROW, ink: INKS.black, linetype: 'CONTINUOUS' },
  /** Bars that show whether a print is full size, and crosses that join tiles. */
  GAUGE: { name: 'GAUGE', width: NARROW, ink: INKS.black, linetype: 'CONTINUOUS' },
  /** What must not be overlooked. */
  WARNING: { name: 'WARNING', width: NARROW, ink: INKS.red, linetype: 'CONTINUOUS' },
  /** Rules of a table. */
  RULE: { name: 'RULE', width: THIN, ink: INKS.gray, linetype: 'CONTINUOUS' },
  FRAME: { name: 'FRAME', width: WIDE, ink: INKS.black, linetype: 'CONTINUOUS' },
} as const satisfies Record<string, Layer>;
