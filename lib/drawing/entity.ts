import type { Deg, Mm } from '../units/mm.ts';
import type { Layer } from './layer.ts';

/** A place in the drawing: model mm, x to the right, y up. */
export type Pt = readonly [x: number, y: number];

/**
 * A corner of a polyline and the curve of the side that leaves it. The bulge is the tangent of a quarter of the swept
 * angle: 0 straight, 1 a half circle, positive when the side turns counter-clockwise.
 */
export type Vertex = readonly [x: number, y: number, bulge?: number];

/** A run of straight lines and arcs. When closed, the last side leads back to the first point. */
export interface Poly {
  readonly kind: 'poly';
  readonly layer: Layer;
  readonly points: readonly Vertex[];
  readonly closed: boolean;
}

/** Part of a circle, counter-clockwise from `start` to `end`; both counted from the x axis. */
export interface Arc {
  readonly kind: 'arc';
  readonly layer: Layer;
  readonly center: Pt;
  readonly radius: Mm;
  readonly start: Deg;
  readonly end: Deg;
}

export interface Circle {
  readonly kind: 'circle';
  readonly layer: Layer;
  readonly center: Pt;
  readonly radius: Mm;
}

/** A filled triangle or quadrilateral, its corners in order around it: an arrowhead, a block of a scale bar. */
export interface Solid {
  readonly kind: 'solid';
  readonly layer: Layer;
  readonly corners: readonly [Pt, Pt, Pt] | readonly [Pt, Pt, Pt, Pt];
}

/** One line of lettering. */
export interface Text {
  readonly kind: 'text';
  readonly layer: Layer;
  readonly text: string;
  readonly at: Pt;
  /** Height of a capital, in paper mm: multiplied by the scale of the view. */
  readonly height: Mm;
  /** Counter-clockwise from the x axis; 0 when left out. */
  readonly rotation?: Deg;
  /** Which end of the line `at` is; `left` when left out. */
  readonly align?: 'left' | 'center' | 'right';
  /** Which height of the line `at` is: its baseline (when left out), half a capital above it, or a whole one. */
  readonly valign?: 'baseline' | 'middle' | 'top';
  /** In the bold face, where a format has one. */
  readonly bold?: boolean;
}

/** What every writer can put on paper as it stands. */
export type Mark = Poly | Arc | Circle | Solid | Text;
