import { type Changes, DESIGNS } from '../written.ts';
import { influenceOf, influenceTable } from './influence.ts';

/** Fewer tenons in a top, so that it does not take long; no parameter cares. */
export const FEW: Changes = { 'edgeJoint.spacing': '24 in' };

/** What each parameter of a design moves, as a table. */
export const tableOf = (design: keyof typeof DESIGNS, changes: Changes = {}, paths?: readonly string[]): string =>
  influenceTable(influenceOf(DESIGNS[design], changes, paths));
