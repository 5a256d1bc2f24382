import { formatInches, formatMm, type Rounding, type UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';

/** Both systems for an inch shop, millimetres alone otherwise. ASCII only. */
export const lengthText = (mm: Mm, units: UnitSystem, rounding: Rounding = 'nearest'): string =>
  units === 'in'
    ? `${formatInches(mm, { mark: '"', rounding })} (${formatMm(mm, 1, rounding, '')})`
    : formatMm(mm, 1, rounding);

/** The same in a table whose title names the unit. */
export const cellText = (mm: Mm, units: UnitSystem, rounding: Rounding = 'nearest'): string =>
  units === 'in' ? lengthText(mm, units, rounding) : formatMm(mm, 1, rounding, '');

/** What the title of such a table ends in. */
export const unitWords = (units: UnitSystem): string => (units === 'in' ? '' : ', mm');
