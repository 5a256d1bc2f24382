import type { Linetype } from './layer.ts';

export interface LinetypeLook {
  /** Dash, gap, dash, gap ... in multiples of the line width; empty for an unbroken line. */
  readonly dash: readonly number[];
  /** A picture in characters, as a DXF linetype table carries it. */
  readonly picture: string;
}

/** Dash 12, long dash 24, gap 3, dot 0.5 line widths: the numbers of ISO 128-2, from memory. */
export const LINETYPES: { readonly [K in Linetype]: LinetypeLook } = {
  CONTINUOUS: { dash: [], picture: '' },
  DASHED: { dash: [12, 3], picture: '__ __ __ __ __' },
  CENTER: { dash: [24, 3, 0.5, 3], picture: '____ . ____ . ____' },
  DIVIDE: { dash: [24, 3, 0.5, 3, 0.5, 3], picture: '____ . . ____ . . ____' },
};
