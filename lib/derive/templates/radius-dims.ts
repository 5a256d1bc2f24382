import type { Radius } from '../../drawing/dim.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { arcOfBulge, type Outline } from '../../geometry/outline.ts';
import { firstLegible, type Sheet } from './sheet.ts';

/** Puts down one dimension for each radius of the outline, at the first of its arcs where it can be read. */
export function putRadiusDims(sheet: Sheet, outline: Outline): void {
  const choices = new Map<string, [Radius, ...Radius[]]>();
  outline.forEach((a, i) => {
    if (!a.bulge) return;
    const { cx, cy, radius, start, span } = arcOfBulge(a, outline[(i + 1) % outline.length]!);
    const on = start + span / 2;
    const choice = (placement: 'inside' | 'outside'): Radius => ({
      kind: 'dim',
      type: 'radius',
      layer: LAYERS.DIMENSION,
      center: [cx, cy],
      on: [cx + radius * Math.cos(on), cy + radius * Math.sin(on)],
      placement,
    });
    const known = choices.get(radius.toFixed(6));
    if (known) known.push(choice('inside'), choice('outside'));
    else choices.set(radius.toFixed(6), [choice('inside'), choice('outside')]);
  });
  for (const places of choices.values()) sheet.put(firstLegible(sheet, places));
}
