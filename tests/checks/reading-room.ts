import type { Changes } from '../written.ts';
import { GOLDEN } from './tried.ts';

/**
 * The reading-room table of the check values with cross rails 69.85 mm thick, which take its tenons of 38.1 mm into each
 * half; mortises no deeper than that.
 */
export const READING_ROOM: Changes = {
  ...GOLDEN,
  'lowerRail.thickness': '2 3/4 in',
  'frameJoint.tenonDepth': '1 1/2 in',
  'frameJoint.depthPlay': '0 in',
};

/** Bending modulus of cherry in the library over that of the check values: 10,270 and 10,300 MPa. */
export const OWN_E = 10_270 / 10_300;
