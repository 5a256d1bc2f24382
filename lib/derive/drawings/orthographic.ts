import type { ProjectionAngle } from '../../drawing/sheet.ts';
import { VIEWS, type View } from './view.ts';

/** The reference end: the far end view seen from the other side. */
const REFERENCE_END: View = { right: [0, -1, 0], up: [0, 0, 1], toward: [-1, 0, 0] };

/**
 * The end view that stands to the right of the front view: the end on that side in third angle, the other one in first
 * angle.
 */
export const endView = (angle: ProjectionAngle): View => (angle === 'third' ? VIEWS.end : REFERENCE_END);
