import type { Deg } from '../units/mm.ts';
import type { Pt } from './entity.ts';
import type { Layer } from './layer.ts';

interface DimBase {
  readonly kind: 'dim';
  readonly layer: Layer;
  /** Replaces the measured text; `<>` inside it stands for the measured text. The value stays exact. */
  readonly text?: string;
}

/** How a dimension line ends: arrowhead between the extension lines, arrowhead outside them, or an oblique stroke. */
export type End = 'in' | 'out' | 'stroke';

/** What the layout decides by itself when nothing is said here. */
export interface Placement {
  /** Over the line; beyond `from` (angles: the start); beyond `to` (angles: the end); or centered on a point, with a leader. */
  readonly text?: 'inside' | 'before' | 'after' | Pt;
  /** At `from` and at `to`; angles: at the start and at the end. */
  readonly ends?: readonly [End, End];
}

/** The distance of two points along one direction: 0 horizontal, 90 vertical, or any other. */
export interface Linear extends DimBase {
  readonly type: 'linear';
  readonly from: Pt;
  readonly to: Pt;
  readonly angle: Deg;
  /** Any point that the dimension line passes through. */
  readonly at: Pt;
  readonly placement?: Placement;
}

/** The true distance of two points, the dimension line parallel to them. */
export interface Aligned extends DimBase {
  readonly type: 'aligned';
  readonly from: Pt;
  readonly to: Pt;
  /** Any point that the dimension line passes through. */
  readonly at: Pt;
  readonly placement?: Placement;
}

/** The angle between two lines, in whichever of their four sectors `at` lies; the order of lines and points is free. */
export interface Angular extends DimBase {
  readonly type: 'angular';
  readonly first: readonly [Pt, Pt];
  readonly second: readonly [Pt, Pt];
  /** A point of the dimension arc. */
  readonly at: Pt;
  readonly placement?: Placement;
}

/** A radius, shown at the point `on` of the curve. */
export interface Radius extends DimBase {
  readonly type: 'radius';
  readonly center: Pt;
  readonly on: Pt;
  readonly placement?: 'inside' | 'outside';
}

/** A diameter, its line through the center, its text near the point `on` of the circle. */
export interface Diameter extends DimBase {
  readonly type: 'diameter';
  readonly center: Pt;
  readonly on: Pt;
  readonly placement?: 'inside' | 'outside';
}

/** How far a place is from a datum along one axis, told at the place: no dimension line, a line leads out to the text. */
export interface Running extends DimBase {
  readonly type: 'running';
  /** Anywhere on the datum. */
  readonly from: Pt;
  /** The place. */
  readonly to: Pt;
  /** 0 measures along x, 1 along y. */
  readonly axis: 0 | 1;
  /** Start, bend and end of the line; the text stands beyond its end, on the side away from its start. */
  readonly line: readonly [Pt, Pt, Pt];
}

export type Dim = Linear | Aligned | Angular | Radius | Diameter | Running;
export type DimType = Dim['type'];
