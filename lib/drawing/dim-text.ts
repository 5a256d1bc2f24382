import { formatInches, formatMm, formatNumber } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import type { Dim, DimType } from './dim.ts';
import type { LengthLook, Style } from './style.ts';

/** What stands before the number. The diameter sign is the letter that common fonts do have, U+00D8. */
export const DIM_PREFIX: { readonly [K in DimType]: string } = {
  linear: '',
  aligned: '',
  angular: '',
  radius: 'R',
  diameter: '\u00d8',
  running: '',
};

/** A length as it is lettered on a drawing: `13 3/8"`, `340`, or `13 3/8" (340)`. */
export function lengthText(mm: Mm, look: LengthLook): string {
  if (look.system === 'mm') return formatMm(mm, look.decimals, 'nearest', '');
  const inches = formatInches(mm, { denominator: look.denominator, rounding: look.rounding, mark: '"' });
  return look.system === 'in' ? inches : `${inches} (${formatMm(mm, look.decimals, 'nearest', '')})`;
}

/**
 * The lettering of a dimension whose value is known.
 *
 * @throws RangeError when the text that replaces it is empty: readers would then letter it anew.
 */
export function dimText(dim: Dim, value: number, style: Style): string {
  const measured =
    dim.type === 'angular'
      ? `${formatNumber(value, style.angleDecimals)}\u00b0`
      : DIM_PREFIX[dim.type] + lengthText(value, style.lengths);
  if (dim.text === undefined) return measured;
  if (dim.text.trim() === '')
    throw new RangeError(`the text of a dimension of ${measured} is empty; leave it out instead`);
  return dim.text.split('<>').join(measured);
}
