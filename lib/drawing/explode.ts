import { explodeAngular } from './angular-dim.ts';
import type { Dim, DimType } from './dim.ts';
import type { Exploded } from './exploded.ts';
import { explodeLinear } from './linear-dim.ts';
import { explodeRadial } from './radial-dim.ts';
import { explodeRunning } from './running-dim.ts';
import type { Style } from './style.ts';

const LAYOUTS: { readonly [K in DimType]: (dim: Extract<Dim, { type: K }>, style: Style) => Exploded } = {
  linear: explodeLinear,
  aligned: explodeLinear,
  angular: explodeAngular,
  radius: explodeRadial,
  diameter: explodeRadial,
  running: explodeRunning,
};

/**
 * Lays a dimension out. This is the only place that does: every writer draws these marks, and a format that has real
 * dimensions stores them as the dimension's picture.
 *
 * ```
 *            13 3/8"            text over the line, read from the bottom or from the right
 *     |<----------------->|     arrowheads and text go outside when there is no room
 *     |                   |     extension lines, with a gap at the part
 * ```
 */
export function explode(dim: Dim, style: Style): Exploded {
  const layout = LAYOUTS[dim.type] as (dim: Dim, style: Style) => Exploded;
  return layout(dim, style);
}
