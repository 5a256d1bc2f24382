import type { BoardPlace, StripPlace } from './strip-plan/strip-plan.ts';

/** Which edge of a board is ripped off: its reference edge, the far one, or half of it off each. */
export type RipSide = 'reference' | 'far' | 'each';

type Lies = Pick<BoardPlace, 'faceUp' | 'turned'>;

/**
 * Seen from the reference end of the top, the reference edge of a board lies left when face A is up and the reference end
 * first (our convention); to turn it over or end for end brings it to the other side.
 */
export const referenceEdgeLeft = ({ faceUp, turned }: Lies): boolean => (faceUp === 'A') !== turned;

/** What is ripped off lies away from the center line; of a strip over that line, half of it on each side. */
export function ripSide(lies: Lies, { from, to }: Pick<StripPlace, 'from' | 'to'>): RipSide {
  if (from < 0 && to > 0) return 'each';
  const offLeft = to <= 0;
  return offLeft === referenceEdgeLeft(lies) ? 'reference' : 'far';
}

/** As a maker says it, after a length: `1 7/16 in off the far edge`. */
export const RIP_WORDS: { readonly [S in RipSide]: string } = {
  reference: 'off the reference edge',
  far: 'off the far edge',
  each: 'half off each edge',
};
