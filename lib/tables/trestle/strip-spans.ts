import type { Mm } from '../../units/mm.ts';

/** Where a strip lies across the top. */
export interface StripSpan {
  /** "3", or "3a" and "3b" for the two halves of a board ripped on the center line. */
  readonly label: string;
  /** mm from the center line, in the frame of the top: from the left long edge to the right one. */
  readonly from: Mm;
  readonly to: Mm;
  readonly notes: readonly string[];
}

/** Closer to the center line than this, a joint lies on it, mm. */
const ON_CENTER = 1e-6;

/**
 * The strips of a top from its left edge to its right one. The top is tapered in halves, so there is always a seam on the
 * center line: a board that lies across it is ripped there and glued back.
 *
 * @param strips how many of equal width, or their widths, mm.
 */
export function stripSpans(strips: number | readonly Mm[], width: Mm): StripSpan[] {
  const widths = typeof strips === 'number' ? Array.from({ length: strips }, () => width / strips) : strips;
  let before = 0;
  return widths.flatMap((w, i): StripSpan[] => {
    const from = onCenter(typeof strips === 'number' ? -width / 2 + (width * i) / strips : -width / 2 + before);
    before += w;
    const last = i === widths.length - 1;
    const to = last
      ? width / 2
      : onCenter(typeof strips === 'number' ? -width / 2 + (width * (i + 1)) / strips : -width / 2 + before);
    const label = `${i + 1}`;
    if (!(from < 0 && to > 0)) return [{ label, from, to, notes: [] }];
    return [
      { label: `${label}a`, from, to: 0, notes: [`from one board with T${label}B, ripped on the center line`] },
      { label: `${label}b`, from: 0, to, notes: [`from one board with T${label}A, ripped on the center line`] },
    ];
  });
}

const onCenter = (y: Mm): Mm => (Math.abs(y) < ON_CENTER ? 0 : y);
