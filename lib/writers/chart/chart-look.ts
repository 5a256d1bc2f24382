import type { Verdict } from '../../model/finding.ts';

/** Sizes in px of a chart that is shown as it is. */
export const CHART = {
  margin: 18,
  /** Between panels. */
  gap: 22,
  text: 11,
  heading: 13,
  title: 17,
  /** From one line of text to the next. */
  leading: 15,
} as const;

export const INK = '#1f1f1f';
export const QUIET = '#5a5a5a';
export const FAINT = '#d9d6cf';

interface VerdictLook {
  /** Behind the marks, and of cells. */
  readonly band: string;
  readonly mark: string;
  /** A path around the origin, about 8 px wide: the shape says the same as the color. */
  readonly shape: string;
}

export const VERDICT_LOOK: { readonly [V in Verdict]: VerdictLook } = {
  'change it': { band: '#f3cbc1', mark: '#8f1f14', shape: 'M-4-4h8v8h-8Z' },
  'look again': { band: '#faeabf', mark: '#7d5200', shape: 'M0-5L5 4H-5Z' },
  'not checked': { band: '#dbe4ee', mark: '#34537a', shape: 'M0-5L5 0L0 5L-5 0Z' },
  ok: { band: '#e4efe1', mark: '#2c6432', shape: 'M-4 0a4 4 0 1 0 8 0a4 4 0 1 0-8 0Z' },
};

/** A mark that no check judges. */
export const PLAIN_MARK = { mark: INK, shape: 'M-3 0a3 3 0 1 0 6 0a3 3 0 1 0-6 0Z' } as const;

/** The fill of what is not allowed: stripes, defined once in the file. */
export const REFUSED_FILL = 'url(#not-allowed)';

export const REFUSED_PATTERN =
  '<pattern id="not-allowed" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">' +
  '<rect width="6" height="6" fill="#f1efea"/><rect width="2" height="6" fill="#bdb8ad"/></pattern>';
