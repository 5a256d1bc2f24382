import type { SceneData } from '../../derive/scene/scene-data.ts';
import type { PartId } from '../../model/part.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Eye } from './eye.ts';

/** The views by name; `joints` is the whole piece with its joints opened. */
export const VIEW_NAMES = ['whole', 'end', 'underside', 'joints'] as const;
export type ViewName = (typeof VIEW_NAMES)[number];

export interface SceneOptions {
  /** Default whole. */
  readonly view?: ViewName;
  /** From where it is looked at, as `eye` told before; then there is no named view. */
  readonly eye?: Eye;
  /** Default those of the data. */
  readonly units?: UnitSystem;
  /** Default none of these. */
  readonly dimensions?: boolean;
  readonly seats?: boolean;
  readonly people?: boolean;
  /** Read out for the picture; default the title. */
  readonly label?: string;
  /** Called when the viewer turns away from a named view by hand: undefined; and with each named view. */
  readonly onView?: (view: ViewName | undefined) => void;
}

/** A scene on the screen. Draws only when something has changed. */
export interface SceneView {
  /** The focusable box that takes mouse, touch and keys. */
  readonly element: HTMLElement;
  /** From where it is looked at, to come back to. */
  eye(): Eye;
  /** Shows other data from the same eye; meshes whose key is known stay where they are. */
  update(data: SceneData): void;
  /** Moves the eye; opens the joints for `joints` and closes them for all others. */
  setView(view: ViewName): void;
  setUnits(units: UnitSystem): void;
  showDimensions(on: boolean): void;
  showSeats(on: boolean): void;
  showPeople(on: boolean): void;
  /** Tints these parts; none to stop. */
  highlight(parts: readonly PartId[]): void;
  /** Turns and tilts the eye by degrees, and moves it nearer (less than 1) or farther: for buttons. */
  turn(by: { readonly turn?: number; readonly tilt?: number; readonly zoom?: number }): void;
  dispose(): void;
}
