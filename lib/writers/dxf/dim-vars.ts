import type { Style } from '../../drawing/style.ts';
import type { Tag } from './tags.ts';

/** The dimension style of the file. */
export const DIM_STYLE = 'SHOP';

/** One setting: its name in the header, its group in a dimension style, and what it is set to. */
export interface DimVar {
  readonly name: string;
  readonly code: number;
  readonly value: number;
}

/** Longest fraction of a number that readers letter themselves: 4 decimals where the style letters inches only. */
const decimalsOf = ({ lengths }: Style): number => (lengths.system === 'in' ? 4 : lengths.decimals);

/**
 * The dimension settings, for readers that lay dimensions out anew. They stand in the header and in the style, since
 * some readers look at one only. Lengths are paper mm; DIMSCALE takes them to the model.
 */
export function dimVars(style: Style): readonly DimVar[] {
  return [
    { name: 'DIMSCALE', code: 40, value: style.scale },
    { name: 'DIMASZ', code: 41, value: style.arrowLength },
    { name: 'DIMEXO', code: 42, value: style.extensionGap },
    { name: 'DIMDLI', code: 43, value: style.nextSpacing },
    { name: 'DIMEXE', code: 44, value: style.extensionOvershoot },
    { name: 'DIMTXT', code: 140, value: style.textHeight },
    { name: 'DIMCEN', code: 141, value: 0 }, // no center marks: they are drawn as such
    { name: 'DIMLFAC', code: 144, value: 1 },
    { name: 'DIMGAP', code: 147, value: style.textGap },
    { name: 'DIMTIH', code: 73, value: 0 }, // text along the line, inside ...
    { name: 'DIMTOH', code: 74, value: 0 }, // ... and outside
    { name: 'DIMTAD', code: 77, value: 1 }, // text over the line
    { name: 'DIMZIN', code: 78, value: 8 }, // no trailing zeros
    { name: 'DIMAZIN', code: 79, value: 2 }, // nor in angles
    { name: 'DIMTOFL', code: 172, value: 1 }, // a line between the points though the arrowheads are outside
    { name: 'DIMADEC', code: 179, value: style.angleDecimals },
    { name: 'DIMDEC', code: 271, value: decimalsOf(style) },
    { name: 'DIMAUNIT', code: 275, value: 0 }, // decimal degrees
    { name: 'DIMLUNIT', code: 277, value: 2 }, // decimal
    { name: 'DIMDSEP', code: 278, value: 46 }, // a point
    { name: 'DIMTMOVE', code: 279, value: 2 }, // text that is moved takes no line with it
  ];
}

/** Code of a header variable: all of these are real numbers or whole ones. */
const isRealVar = ({ code }: DimVar): boolean => (code >= 40 && code < 50) || (code >= 140 && code < 150);

/** The settings as header variables. */
export const dimVarHeader = (style: Style): readonly Tag[] =>
  dimVars(style).flatMap((one): Tag[] => [
    [9, `$${one.name}`],
    [isRealVar(one) ? 40 : 70, one.value],
  ]);

/** The settings as groups of a dimension style. */
export const dimVarStyle = (style: Style): readonly Tag[] => dimVars(style).map((one): Tag => [one.code, one.value]);
