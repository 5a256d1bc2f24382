import type { Mm } from '../../../units/mm.ts';
import { GAUSS_5, integrate } from './gauss.ts';
import { soundWing, type Wing, type WingLoad, wingMoment, wingThickness } from './wing.ts';

/** Tapers below this lose the digits of the closed forms, which divide by powers of it. */
const LITTLE_TAPER = 0.1;

/** How far the tip goes down. @throws RangeError when a size or the modulus is not positive. */
export function tipDeflection(wing: Wing, load: WingLoad): Mm {
  soundWing(wing);
  const closed = Math.abs(wing.root / wing.tip - 1) >= LITTLE_TAPER;
  return closed ? byClosedForm(wing, load) : byQuadrature(wing, load);
}

/**
 * With r = root/tip, m = r - 1 and I of the root (derived):
 * tip load (P a³/E I)(r³/m³)[ln r - m(3r - 1)/2r²], even load (q a⁴/2E I) r³ J3, own weight
 * (γ b a⁴/E I) r³ [tip J3/2 + (root - tip) J4/6].
 */
function byClosedForm({ reach: a, breadth, tip, root, e }: Wing, load: WingLoad): Mm {
  const r = root / tip;
  const m = r - 1;
  const stiffness = (e * breadth * root ** 3) / 12 / r ** 3;
  if (load.kind === 'tip') {
    return ((load.force * a ** 3) / stiffness / m ** 3) * (Math.log(r) - (m * (3 * r - 1)) / (2 * r * r));
  }
  const j3 = (r - 3 * Math.log(r) - 3 / r + 1 / (2 * r * r) + 1.5) / m ** 4;
  if (load.kind === 'even') return ((load.perLength * a ** 4) / (2 * stiffness)) * j3;
  const squares = (r * r - 1) / 2 - (1 / (r * r) - 1) / 2;
  const j4 = (squares - 4 * m + 6 * Math.log(r) + 4 * (1 / r - 1)) / m ** 5;
  return ((load.perVolume * breadth * a ** 4) / stiffness) * ((tip * j3) / 2 + ((root - tip) * j4) / 6);
}

/** The integral of M x / E I, five points on each of four parts. */
function byQuadrature(wing: Wing, load: WingLoad): Mm {
  const curvature = (x: Mm): number => (12 * wingMoment(wing, load, x)) / (wing.breadth * wingThickness(wing, x) ** 3);
  return integrate((x) => curvature(x) * x, 0, wing.reach, GAUSS_5, 4) / wing.e;
}
