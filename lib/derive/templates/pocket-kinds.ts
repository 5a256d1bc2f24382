import type { Pt } from '../../drawing/entity.ts';
import type { Pocket } from '../../model/feature.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { lengthText } from './length-text.ts';
import type { PocketMark } from './pocket-marks.ts';

/** Pockets that are worked alike share a letter. */
export interface PocketKind {
  readonly letter: string;
  /** Size, depth and place in the thickness, as it is lettered. */
  readonly words: string;
  /** Middle of each of them on the sheet. */
  readonly at: readonly Pt[];
}

export function pocketKinds(marks: readonly PocketMark[], units: UnitSystem): PocketKind[] {
  const kinds = new Map<string, Pt[]>();
  for (const { pocket, center } of marks) {
    const words = `${WORDS[pocket.kind](pocket as never, units)}${whereText(pocket, units)}`;
    kinds.set(words, [...(kinds.get(words) ?? []), center]);
  }
  return [...kinds].map(([words, at], k) => ({ letter: letterOf(k), words, at }));
}

/** Without i, l and o, which look like figures. */
const LETTERS = 'abcdefghjkmnpqrstuvwxyz';

/** a to z, then aa, ab … */
const letterOf = (k: number): string =>
  (k < LETTERS.length ? '' : letterOf(Math.floor(k / LETTERS.length) - 1)) + LETTERS[k % LETTERS.length];

const WORDS: { readonly [K in Pocket['kind']]: (pocket: Extract<Pocket, { kind: K }>, units: UnitSystem) => string } = {
  mortise: (p, u) => `mortise ${size(p.width, p.length, u)}, ${depthText(p.depth, u)}`,
  bore: (p, u) => `${p.purpose} hole ${lengthText(p.diameter, u)} across, ${depthText(p.depth, u)}`,
  slottedHole: (p, u) => `${p.purpose} slot ${size(p.width, p.length, u)}, ${depthText(p.depth, u)}`,
};

const size = (width: Mm, length: Mm, units: UnitSystem): string =>
  `${lengthText(width, units)} x ${lengthText(length, units)}`;

const depthText = (depth: Mm | 'through', units: UnitSystem): string =>
  depth === 'through' ? 'right through' : `${lengthText(depth, units)} deep`;

/** Where it is in the thickness, which the face does not show. */
function whereText({ into, at }: Pocket, units: UnitSystem): string {
  if (Math.abs(into[2]) < 0.5) return `, its middle ${lengthText(at[2], units)} from this face`;
  return into[2] < 0 ? ', from the far face' : '';
}
