import type { Mm } from '../units/mm.ts';

/** Paper by the inch with the scales of an architect's rule, or paper of ISO 216 with decimal scales. */
export type PaperSet = 'us' | 'iso';

export const PAPER_SIZES = ['A', 'B', 'C', 'D', 'A4', 'A3', 'A2', 'A1'] as const;

export type PaperSize = (typeof PAPER_SIZES)[number];

/** A sheet of paper, long side across, with the frame that is drawn on it. */
export interface Paper {
  readonly name: PaperSize;
  readonly set: PaperSet;
  readonly width: Mm;
  readonly height: Mm;
  /** From the edge of the paper to the frame. The left one is wide enough to punch. */
  readonly margin: { readonly left: Mm; readonly rest: Mm };
}

// ISO 5457: 20 mm on the left, 10 mm elsewhere, from memory. US sheets: 1/2 in on the left and 3/8 in, common practice,
// no source.
const us = (name: PaperSize, width: Mm, height: Mm): Paper => ({
  name,
  set: 'us',
  width: width * 25.4,
  height: height * 25.4,
  margin: { left: 12.7, rest: 9.525 },
});

const iso = (name: PaperSize, width: Mm, height: Mm): Paper => ({
  name,
  set: 'iso',
  width,
  height,
  margin: { left: 20, rest: 10 },
});

/** Sizes of ASME Y14.1 and ISO 5457. */
export const PAPERS: { readonly [S in PaperSize]: Paper } = {
  A: us('A', 11, 8.5),
  B: us('B', 17, 11),
  C: us('C', 22, 17),
  D: us('D', 34, 22),
  A4: iso('A4', 297, 210),
  A3: iso('A3', 420, 297),
  A2: iso('A2', 594, 420),
  A1: iso('A1', 841, 594),
};

/** What a shop prints on without being told: the larger sheet of an office printer (our convention). */
export const USUAL_PAPER: { readonly [S in PaperSet]: PaperSize } = { us: 'B', iso: 'A3' };

/**
 * Scales a view may be drawn at, largest first. ISO 5455: 1:1 to 1:50 by 1, 2, 5. Feet and inches: those of an architect's
 * rule, 3 in, 1 1/2 in, 1 in, 3/4 in, 1/2 in, 3/8 in, 1/4 in and 1/8 in to the foot, and half size (common practice, no source).
 */
export const SCALES: { readonly [S in PaperSet]: readonly number[] } = {
  us: [1, 2, 4, 8, 12, 16, 24, 32, 48, 96],
  iso: [1, 2, 5, 10, 20, 50, 100],
};
