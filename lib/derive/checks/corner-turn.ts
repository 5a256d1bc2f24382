import type { Mm } from '../../units/mm.ts';

/**
 * A turn from one corridor into another at a right angle.
 *
 *      ┌──────────────
 *      │     after  ↕
 *      │      ┌───────
 *      │before│
 *      │  ↔   │
 */
export interface Corner {
  /** mm, widths. */
  readonly before: Mm;
  readonly after: Mm;
}

/** Rounding, mm. */
const SAME: Mm = 1e-9;

/** Halvings of a right angle: more would not move a double. */
const HALVINGS = 60;

/**
 * The longest thing of a width that turns level around a corner, mm; 0 when it is too wide for one of the corridors.
 *
 * With its long side against both outer walls at an angle θ, the inner corner stays clear as long as
 *
 *     L ≤ (a₁ sin θ + a₂ cos θ − b) / (sin θ cos θ)
 *
 * and the turn passes through every θ, so the least of it counts. Its derivative has the sign of a₁ sin³θ − a₂ cos³θ +
 * b (cos²θ − sin²θ), which changes once from minus to plus while b is less than both corridors. For equal corridors that
 * is at 45°: L = 2√2 a − 2b.
 */
export function longestThrough({ before, after }: Corner, width: Mm): Mm {
  if (width >= Math.min(before, after) - SAME) return 0;
  let low = 0;
  let high = Math.PI / 2;
  for (let k = 0; k < HALVINGS; k++) {
    const angle = (low + high) / 2;
    const [s, c] = [Math.sin(angle), Math.cos(angle)];
    if (before * s ** 3 - after * c ** 3 + width * (c * c - s * s) < 0) low = angle;
    else high = angle;
  }
  const angle = (low + high) / 2;
  const [s, c] = [Math.sin(angle), Math.cos(angle)];
  return (before * s + after * c - width) / (s * c);
}

/** mm to spare on the way around: turned level, or pushed on sideways without turning when it is short enough. */
export function spareAround(corner: Corner, length: Mm, width: Mm): Mm {
  const { before, after } = corner;
  const turned = longestThrough(corner, width);
  const sideways = Math.max(Math.min(after - length, before - width), Math.min(before - length, after - width));
  return Math.max(turned > 0 ? turned - length : Math.min(before, after) - width - length, sideways);
}

/** Width of two equal corridors in which a thing just turns level, mm: (L + 2b) / 2√2. */
export const corridorFor = (length: Mm, width: Mm): Mm => (length + 2 * width) / (2 * Math.SQRT2);
