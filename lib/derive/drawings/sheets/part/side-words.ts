import type { Part } from '../../../../model/part.ts';
import type { SideWords } from './pocket-letters.ts';

const REFERENCE: SideWords = {
  face: 'reference face',
  farFace: 'far face',
  edge: 'reference edge',
  farEdge: 'far edge',
  end: 'reference end',
  farEnd: 'far end',
};

/** A top and its boards are laid out from the show face and named as the table stands. */
const TOP: SideWords = {
  ...REFERENCE,
  face: 'show face',
  farFace: 'underside',
  edge: 'left edge',
  farEdge: 'right edge',
};

/** What the sides of a part are called; a board glued under another has no show face. */
export function sideWordsOf({ body }: Pick<Part, 'body'>): SideWords {
  if (body.kind === 'slice' && body.top > 0) return { ...TOP, face: 'upper face' };
  return body.kind === 'slice' || body.kind === 'panel' ? TOP : REFERENCE;
}
