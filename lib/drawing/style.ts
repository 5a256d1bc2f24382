import type { Denominator, Rounding } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';

/** How a length is lettered: inches and fractions, millimetres, or inches with millimetres after them in brackets. */
export type LengthLook =
  | { readonly system: 'in'; readonly denominator: Denominator; readonly rounding: Rounding }
  | { readonly system: 'mm'; readonly decimals: number }
  | {
      readonly system: 'both';
      readonly denominator: Denominator;
      readonly rounding: Rounding;
      readonly decimals: number;
    };

/** How the dimensions of one view look. Every length but the scale is in paper mm. */
export interface Style {
  /** Model mm in one paper mm: 1 for a full-size template, 10 for a view at 1:10. */
  readonly scale: number;
  /** Height of a capital. */
  readonly textHeight: Mm;
  /** Clear distance of lettering from the line under it and from what stands beside it. */
  readonly textGap: Mm;
  readonly arrowLength: Mm;
  readonly arrowWidth: Mm;
  /** From the measured point to the start of its extension line. */
  readonly extensionGap: Mm;
  /** Of an extension line past the dimension line. */
  readonly extensionOvershoot: Mm;
  /** From the edge of the part to the first dimension line. */
  readonly firstSpacing: Mm;
  /** From one dimension line to the next. */
  readonly nextSpacing: Mm;
  readonly lengths: LengthLook;
  readonly angleDecimals: number;
}

/** Inches in sixty-fourths: fits are read to 1/64 (common practice, no source). */
export const INCHES: LengthLook = { system: 'in', denominator: 64, rounding: 'nearest' };

export const DEFAULT_STYLE: Style = {
  scale: 1,
  textHeight: 2.5, // ISO 3098-1 series; that it suits a letter sheet is common practice, no source
  textGap: 0.8, // common practice, no source; more than half an arrowhead, so text may stand over one
  arrowLength: 2.5, // as high as the text: common practice, no source
  arrowWidth: 2.5 / 3, // about 3 : 1, ASME Y14.2
  extensionGap: 1.5, // a visible gap, ASME Y14.5; the number from memory
  extensionOvershoot: 2, // past the dimension line, ASME Y14.5; the number is common practice, no source
  firstSpacing: 10, // 10 mm or more, ASME Y14.5
  nextSpacing: 8, // 6 mm or more, ASME Y14.5
  lengths: INCHES,
  angleDecimals: 1, // common practice, no source
};

/** Lengths of a style that are bound to the paper, in the model mm of its scale. */
export interface Sizes {
  readonly text: Mm;
  readonly textGap: Mm;
  readonly arrow: Mm;
  readonly arrowWidth: Mm;
  readonly gap: Mm;
  readonly overshoot: Mm;
}

/** @throws RangeError when the scale is not a positive number. */
export function sizes(style: Style): Sizes {
  const { scale } = style;
  if (!(scale > 0 && scale < Infinity)) throw new RangeError(`a scale of ${scale} is not a positive number`);
  return {
    text: style.textHeight * scale,
    textGap: style.textGap * scale,
    arrow: style.arrowLength * scale,
    arrowWidth: style.arrowWidth * scale,
    gap: style.extensionGap * scale,
    overshoot: style.extensionOvershoot * scale,
  };
}
