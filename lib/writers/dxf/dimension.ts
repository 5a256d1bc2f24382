import type { Dim, DimType } from '../../drawing/dim.ts';
import { DIM_PREFIX } from '../../drawing/dim-text.ts';
import type { Definition, Exploded } from '../../drawing/exploded.ts';
import type { Style } from '../../drawing/style.ts';
import { radians } from '../../units/mm.ts';
import { DIM_STYLE } from './dim-vars.ts';
import { entity } from './entities.ts';
import type { Handles } from './handles.ts';
import { point, type Tag } from './tags.ts';
import { dxfText } from './text.ts';

/**
 * Group 70: the kind of dimension. Angles are the two-line kind, which more readers draw than the three-point one; running
 * dimensions are distances from the datum, since not every reader draws the format's own coordinate dimensions (kind 6).
 */
const KIND: { readonly [K in DimType]: number } = {
  linear: 0,
  aligned: 1,
  angular: 2,
  diameter: 3,
  radius: 4,
  running: 0,
};

/** The block belongs to this dimension alone (32); its text was placed (128). */
const FLAGS = 32 + 128;

/** The point of group 10, which stands before the points of the kind. */
function head(def: Definition): readonly [number, number] {
  switch (def.type) {
    case 'linear':
    case 'aligned':
      return def.line;
    case 'angular':
      return def.end[1];
    case 'diameter':
    case 'radius':
      return def.far;
  }
}

function tail(def: Definition): readonly Tag[] {
  switch (def.type) {
    case 'linear':
    case 'aligned':
      // Group 50 belongs to the rotated kind; one reader measures an aligned dimension along x without it.
      return [
        [100, 'AcDbAlignedDimension'],
        ...point(13, def.from),
        ...point(14, def.to),
        [50, def.angle],
        ...(def.type === 'linear' ? [[100, 'AcDbRotatedDimension'] as Tag] : []),
      ];
    case 'angular':
      return [
        [100, 'AcDb2LineAngularDimension'],
        ...point(13, def.start[0]),
        ...point(14, def.start[1]),
        ...point(15, def.end[0]),
        ...point(16, def.arc),
      ];
    case 'diameter':
      return [[100, 'AcDbDiametricDimension'], ...point(15, def.near), [40, def.leader]];
    case 'radius':
      return [[100, 'AcDbRadialDimension'], ...point(15, def.near), [40, def.leader]];
  }
}

/**
 * What the dimension itself is lettered with. A measured text in the reader's own form stays live (`<>`, after the sign
 * that an empty text would lose); fractions of an inch and texts of the maker's are written out.
 */
function lettering(dim: Dim, text: string, style: Style): string {
  const live = dim.text === undefined && (dim.type === 'angular' || style.lengths.system === 'mm');
  return live ? `${dxfText(DIM_PREFIX[dim.type])}<>` : dxfText(text);
}

/** A real dimension: what it measures, where its text is, and the block that pictures it. */
export function dimensionTags(
  dim: Dim,
  style: Style,
  exploded: Exploded,
  block: string,
  handles: Handles,
  owner: string,
): readonly Tag[] {
  const { def, textAt, value, text } = exploded;
  return [
    ...entity('DIMENSION', dim.layer, handles, owner),
    [100, 'AcDbDimension'],
    [2, block],
    ...point(10, head(def)),
    ...point(11, textAt),
    [70, KIND[dim.type] + FLAGS],
    [71, 5], // the text is centered on its point
    [42, dim.type === 'angular' ? radians(value) : value],
    [1, lettering(dim, text, style)],
    [3, DIM_STYLE],
    ...tail(def),
  ];
}
