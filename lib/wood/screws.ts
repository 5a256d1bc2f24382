import type { Mm } from '../units/mm.ts';
import { read, type Sourced } from './sourced.ts';
import type { Species } from './species.ts';

/** Shank diameter of wood screws by gauge number, mm. */
export const SHANK_DIAMETERS = read(
  {
    4: 2.84,
    5: 3.18,
    6: 3.51,
    7: 3.84,
    8: 4.17,
    9: 4.5,
    10: 4.83,
    11: 5.16,
    12: 5.49,
    14: 6.15,
    16: 6.81,
    18: 7.47,
    20: 8.13,
    24: 9.45,
  } as const,
  'FPL-GTR-282 table 8-9 (public copy)',
);

export type ScrewGauge = keyof typeof SHANK_DIAMETERS.value;

/** Root diameter over shank diameter. */
export const ROOT_OVER_SHANK: Sourced<number> = read(2 / 3, 'FPL-GTR-190 ch. 8: about two thirds');

/** Lead hole over root diameter. */
export const LEAD_HOLE_OVER_ROOT: Sourced<{ readonly [K in Species['kind']]: number }> = read(
  { hardwood: 0.9, softwood: 0.7 },
  'FPL-GTR-282 ch. 8 (public copy)',
);

/** Shank diameter of a gauge number. */
export function shankDiameter(gauge: ScrewGauge): Mm {
  const diameter: Mm | undefined = SHANK_DIAMETERS.value[gauge];
  if (diameter === undefined) {
    throw new RangeError(
      `there is no screw gauge ${gauge}; there are ${Object.keys(SHANK_DIAMETERS.value).join(', ')}`,
    );
  }
  return diameter;
}

/** Diameter of the lead hole for the thread, before it is rounded to a drill. */
export function leadHole(shank: Mm, kind: Species['kind']): Mm {
  return shank * ROOT_OVER_SHANK.value * LEAD_HOLE_OVER_ROOT.value[kind];
}
