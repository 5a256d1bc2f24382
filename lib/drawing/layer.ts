import type { Mm } from '../units/mm.ts';

/** The line types every reader has been seen to draw; their dashes are in `linetypes.ts`. */
export type Linetype = 'CONTINUOUS' | 'DASHED' | 'CENTER' | 'DIVIDE';

/** One ink as both kinds of writer name it. */
export interface Ink {
  /** Color number in a DXF layer table, 1 to 255. */
  readonly index: number;
  /** The same for paper and screen, `#rrggbb`. */
  readonly rgb: string;
}

/** What lines on one layer mean and how they look. */
export interface Layer {
  /** Trade words in capitals. */
  readonly name: string;
  /** Line width in paper mm. */
  readonly width: Mm;
  readonly ink: Ink;
  readonly linetype: Linetype;
}
