import type { Outline } from '../../geometry/outline.ts';
import type { TemplateFace } from './template-face.ts';

/** Faces with whatever differs less than 1e-6 mm taken as one. */
const digits = (value: number): number => Math.round(value * 1e6) + 0;

/** Which half of the underside a side lies on is another matter on the other frame, and changes nothing on the sheet. */
const shapeOf = (outline: Outline | undefined): unknown =>
  outline?.map(({ x, y, bulge = 0, surface }) => [digits(x), digits(y), digits(bulge), surface?.split('.')[0]]);

/** The same text for faces that are worked alike. */
function keyOf({ parts: [part], thickness, outlines, pockets, kinds }: TemplateFace): string {
  return JSON.stringify([
    part.name,
    part.wood,
    digits(part.finished.length),
    digits(thickness),
    [outlines.near, outlines.far, outlines.designed].map(shapeOf),
    pockets
      .map((mark) => [shapeOf(mark.outline), mark.axis?.flat().map(digits)])
      .map((one) => JSON.stringify(one))
      .sort(),
    kinds.map(({ words, at }) => [words, at.length]),
  ]);
}

/** Faces with those that are alike made one, which then stands for all their parts; in the order of the first of each. */
export function alikeFaces(faces: readonly TemplateFace[]): TemplateFace[] {
  const found = new Map<string, TemplateFace>();
  for (const face of faces) {
    const key = keyOf(face);
    const known = found.get(key);
    found.set(key, known ? { ...known, parts: [...known.parts, ...face.parts] } : face);
  }
  return [...found.values()];
}
