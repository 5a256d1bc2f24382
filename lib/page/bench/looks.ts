import type { Eye } from '../scene/eye.ts';
import type { ViewName } from '../scene/scene-view.ts';

/** How the picture is looked at. */
export interface Looks {
  readonly view: ViewName | undefined;
  /** When it is looked at from somewhere else. */
  readonly eye?: Eye | undefined;
  readonly dimensions: boolean;
}

export const FIRST_LOOKS: Looks = { view: 'whole', dimensions: false };
