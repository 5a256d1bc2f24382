import type { Vec2 } from '../../../geometry/vec.ts';
import type { Mm } from '../../../units/mm.ts';
import { positive } from '../../../wood/in-range.ts';

/** What a section does in bending that moves it along y. */
export interface Section {
  /** mm². */
  readonly area: number;
  /** Center of the area, mm along y. */
  readonly center: Mm;
  /** mm⁴ about the level line through the center. */
  readonly inertia: number;
  /** mm³ for the stress where y is least, and where it is greatest: M over this. */
  readonly modulusLow: number;
  readonly modulusHigh: number;
}

/**
 * A section with straight sides, from its corners in order, either way round; mm, any origin: a_i = x_i y_{i+1} -
 * x_{i+1} y_i, A = ½Σa_i, ȳ = Σ(y_i + y_{i+1}) a_i / 6A, I = Σ(y_i² + y_i y_{i+1} + y_{i+1}²) a_i / 12 - A ȳ² (Green's
 * theorem; read in Drang 2018). Digits are kept by counting from the first corner.
 *
 * @throws RangeError when the corners enclose no area.
 */
export function polygonSection(corners: readonly Vec2[]): Section {
  const [x0, y0] = corners[0] ?? [0, 0];
  const at = corners.map(([x, y]): Vec2 => [x - x0, y - y0]);
  let [area, first, second] = [0, 0, 0];
  at.forEach(([xa, ya], i) => {
    const [xb, yb] = at[(i + 1) % at.length]!;
    const a = xa * yb - xb * ya;
    area += a / 2;
    first += ((ya + yb) * a) / 6;
    second += ((ya * ya + ya * yb + yb * yb) * a) / 12;
  });
  const sign = Math.sign(area);
  const center = first / area;
  const ys = at.map(([, y]) => y);
  return section(sign * area, center, sign * (second - first * center), Math.min(...ys), Math.max(...ys), y0);
}

/**
 * A top that is flat above and rises from both long edges to a ridge below, y down from the flat face:
 * A = W(e + c)/2, y_c = (e² + ec + c²) / 3(e + c), I = W(e⁴ + 2e³c + 2ec³ + c⁴) / 36(e + c) (derived).
 *
 * ```
 *   ┌───────── width ─────────┐
 *   edge                      │
 *   └────___           ___────┘
 *           ─── ridge ─
 * ```
 *
 * @param edge thickness at the long edges; 0 for a triangle. @param ridge thickness on the center line.
 */
export function wedgeSection(width: Mm, edge: Mm, ridge: Mm): Section {
  const [e, c] = [edge, ridge];
  const sum = positive('edge and ridge', e + c, ' mm');
  const area = (positive('width', width, ' mm') * sum) / 2;
  const center = (e * e + e * c + c * c) / (3 * sum);
  const inertia = (width * (e ** 4 + 2 * e ** 3 * c + 2 * e * c ** 3 + c ** 4)) / (36 * sum);
  return section(area, center, inertia, 0, Math.max(e, c), 0);
}

function section(area: number, center: Mm, inertia: number, low: Mm, high: Mm, origin: Mm): Section {
  return {
    area: positive('area of the section', area, ' mm²'),
    center: center + origin,
    inertia,
    modulusLow: inertia / (center - low),
    modulusHigh: inertia / (high - center),
  };
}
