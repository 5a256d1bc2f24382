import type { Deg } from '../units/mm.ts';
import type { Mark, Pt } from './entity.ts';

/** The points that define a dimension, as a file format with real dimensions stores them. */
export type Definition =
  | {
      readonly type: 'linear' | 'aligned';
      /** The point of the dimension line across from `to`. */
      readonly line: Pt;
      readonly from: Pt;
      readonly to: Pt;
      /** Direction of the dimension line. */
      readonly angle: Deg;
    }
  | {
      readonly type: 'angular';
      /** The two rays that bound the sector, counter-clockwise; each runs away from their crossing. */
      readonly start: readonly [Pt, Pt];
      readonly end: readonly [Pt, Pt];
      /** The point of the dimension arc. */
      readonly arc: Pt;
    }
  | {
      readonly type: 'radius' | 'diameter';
      /** The center, or for a diameter the far end. */
      readonly far: Pt;
      /** The end at which the text is. */
      readonly near: Pt;
      /** Length of the line drawn past `near`, 0 when the text is inside. */
      readonly leader: number;
    };

/** A dimension laid out: what to draw, and what to tell a format that keeps dimensions as such. */
export interface Exploded {
  readonly entities: readonly Mark[];
  /** Center of the lettering. */
  readonly textAt: Pt;
  readonly def: Definition;
  /** Model mm; degrees for an angle. */
  readonly value: number;
  readonly text: string;
}
