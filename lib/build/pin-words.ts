import type { BoardPlace, StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';

/** Every board of a plan as one would settle it by hand, to be copied as far as it is glued: what `readPins` reads. */
export function pinWords({ strips }: StripPlan): string {
  const layered = strips.some(({ bottom }) => bottom);
  return strips
    .flatMap(({ show, bottom }, j) => [
      pinOf(show, j + 1, layered ? 'show' : undefined),
      ...(bottom ? [pinOf(bottom, j + 1, 'under')] : []),
    ])
    .join('; ');
}

function pinOf({ mark, faceUp, turned }: BoardPlace, strip: number, layer: string | undefined): string {
  const words = [`strip ${strip}`, layer, `${faceUp} up`, turned ? 'turned' : 'not turned'];
  return `${mark} ${words.filter(Boolean).join(', ')}`;
}
