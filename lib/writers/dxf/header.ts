import type { Box } from '../../drawing/bounds.ts';
import type { Style } from '../../drawing/style.ts';
import { DIM_STYLE, dimVarHeader } from './dim-vars.ts';
import { flatPoint, point, type Tag } from './tags.ts';

/** The variables of a file: R2000, millimetres, its extents, and the first handle that is still free. */
export function header(style: Style, box: Box, handSeed: string): readonly Tag[] {
  const one = (name: string, ...values: readonly Tag[]): readonly Tag[] => [[9, `$${name}`], ...values];
  return [
    ...one('ACADVER', [1, 'AC1015']),
    ...one('DWGCODEPAGE', [3, 'ANSI_1252']),
    ...one('INSBASE', ...point(10, [0, 0])),
    ...one('EXTMIN', ...point(10, box.min)),
    ...one('EXTMAX', ...point(10, box.max)),
    ...one('LIMMIN', ...flatPoint(10, box.min)),
    ...one('LIMMAX', ...flatPoint(10, box.max)),
    ...one('LTSCALE', [40, style.scale]), // dashes are paper mm
    ...one('TEXTSIZE', [40, style.textHeight * style.scale]),
    ...one('TEXTSTYLE', [7, 'Standard']),
    ...one('CLAYER', [8, '0']),
    ...one('CELTYPE', [6, 'ByLayer']),
    ...one('CECOLOR', [62, 256]),
    ...one('DIMSTYLE', [2, DIM_STYLE]),
    ...one('DIMTXSTY', [7, 'Standard']),
    ...dimVarHeader(style),
    ...one('LUNITS', [70, 2]), // decimal
    ...one('LUPREC', [70, 4]),
    ...one('AUNITS', [70, 0]), // degrees
    ...one('AUPREC', [70, 4]),
    ...one('HANDSEED', [5, handSeed]),
    ...one('MEASUREMENT', [70, 1]), // metric
    ...one('CELWEIGHT', [370, -1]), // by layer
    ...one('LWDISPLAY', [290, 1]),
    ...one('INSUNITS', [70, 4]), // millimetres
    ...one('PSTYLEMODE', [290, 1]),
  ];
}
