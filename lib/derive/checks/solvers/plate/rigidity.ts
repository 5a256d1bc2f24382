import { positive } from '../../../../wood/in-range.ts';
import type { PlateWood } from './plate.ts';

/** Bending stiffness of a plate over the cube of its thickness, MPa. */
export interface Rigidity {
  /** D_x / h³, along. */
  readonly along: number;
  /** D_y / h³, across. */
  readonly across: number;
  /** D_1 / h³, what bending one way does the other way. */
  readonly coupling: number;
  /** D_k / h³, twist. */
  readonly twist: number;
}

/**
 * ν_TL = ν_LT E_T/E_L, N = 12(1 - ν_LT ν_TL); D_x = E_L h³/N, D_y = E_T h³/N, D_1 = ν_LT E_T h³/N, D_k = G h³/12. The
 * energy of bending is ½∫(D_x w_xx² + 2 D_1 w_xx w_yy + D_y w_yy² + 4 D_k w_xy²).
 *
 * @throws RangeError when a modulus is not positive or Poisson's ratio is too large for the two moduli.
 */
export function rigidityOf({ along, across, shear, poisson }: PlateWood): Rigidity {
  const e = positive('E along', along, ' MPa');
  const et = positive('E across', across, ' MPa');
  const both = (poisson * poisson * et) / e;
  if (!(both < 1)) throw new RangeError(`Poisson's ratio is ${poisson}; it must be below ${Math.sqrt(e / et)}`);
  const n = 12 * (1 - both);
  return {
    along: e / n,
    across: et / n,
    coupling: (poisson * et) / n,
    twist: positive('shear modulus', shear, ' MPa') / 12,
  };
}
