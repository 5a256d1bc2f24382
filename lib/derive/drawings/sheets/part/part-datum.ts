import type { Vec3 } from '../../../../geometry/vec.ts';
import type { Part } from '../../../../model/part.ts';
import type { Mm } from '../../../../units/mm.ts';
import type { Bounds } from '../../../solids/solid.ts';

/** What a part is measured from, in its own frame: reference end, reference edge, reference face. */
export const datumOf = ({ body }: Pick<Part, 'body'>, { min }: Bounds): Vec3 =>
  // A glued top is laid out from its center line.
  body.kind === 'panel' ? [min[0], 0, min[2]] : min;

/** The way from the datum to a place along one axis, mm; to either hand of a center line. */
export const fromDatum = (datum: Vec3, axis: 0 | 1 | 2, at: Mm): Mm => Math.abs(at - datum[axis]);
