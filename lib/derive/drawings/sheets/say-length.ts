import type { LengthLook } from '../../../drawing/style.ts';
import { formatInches, formatMm, type Rounding } from '../../../units/format-length.ts';
import type { Mm } from '../../../units/mm.ts';

/** A length in a sentence of a sheet: `13 3/8"`, `340 mm`, `13 3/8" (340 mm)`; rounded to the side that does not flatter. */
export function sayLength(mm: Mm, look: LengthLook, rounding: Rounding = 'nearest'): string {
  if (look.system === 'mm') return formatMm(mm, look.decimals, rounding);
  const inches = formatInches(mm, { denominator: look.denominator, rounding, mark: '"' });
  return look.system === 'in' ? inches : `${inches} (${formatMm(mm, look.decimals, rounding)})`;
}

/** The same in eighths of an inch or whole millimetres: for what nobody measures more closely. */
export const sayRoughly = (mm: Mm, look: LengthLook, rounding: Rounding = 'nearest'): string =>
  sayLength(mm, look.system === 'mm' ? { ...look, decimals: 0 } : { ...look, ...ROUGH }, rounding);

/** An eighth is what one reads off a tape at a glance: our convention. */
const ROUGH = { denominator: 8, decimals: 0 } as const;

/** A length as a dimension letters it: millimetres without their unit. */
export function sayDim(mm: Mm, look: LengthLook, rounding: Rounding = 'nearest'): string {
  if (look.system === 'mm') return formatMm(mm, look.decimals, rounding, '');
  const inches = formatInches(mm, { denominator: look.denominator, rounding, mark: '"' });
  return look.system === 'in' ? inches : `${inches} (${formatMm(mm, look.decimals, rounding, '')})`;
}
