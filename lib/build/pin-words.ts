import type { BoardPlace, StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';
import type { StripPin } from '../derive/lumber/strip-plan/strip-problem.ts';

/** Every board of a plan as one would settle it by hand, to be copied as far as it is glued: what `readPins` reads. */
export function pinWords({ strips }: StripPlan): string {
  const layered = strips.some(({ bottom }) => bottom);
  const pin = ({ mark, faceUp, turned }: BoardPlace, strip: number, layer: StripPin['layer']): string =>
    pinEntry({ mark, strip, faceUp, turned, ...(layer && layered ? { layer } : {}) });
  return strips
    .flatMap(({ show, bottom }, j) => [pin(show, j + 1, 'show'), ...(bottom ? [pin(bottom, j + 1, 'bottom')] : [])])
    .join('; ');
}

/** One board settled by hand: `7 strip 2, show, A up, turned`. */
export function pinEntry({ mark, strip, layer, faceUp, turned }: StripPin): string {
  const words = [
    strip !== undefined && `strip ${strip}`,
    layer && (layer === 'show' ? 'show' : 'under'),
    faceUp && `${faceUp} up`,
    turned !== undefined && (turned ? 'turned' : 'not turned'),
  ].filter(Boolean);
  return words.length > 0 ? `${mark} ${words.join(', ')}` : mark;
}
