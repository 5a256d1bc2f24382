import type { Mm } from '../../../units/mm.ts';
import type { BentBeam } from './beam-bend.ts';

/** A moment in N mm and where it acts, mm from the end. */
export interface Peak {
  readonly at: Mm;
  readonly moment: number;
}

/** The greatest moment that pulls the lower side, and the greatest that pulls the upper one; 0 where there is none. */
export interface Peaks {
  readonly sagging: Peak;
  /** Its moment is negative. */
  readonly hogging: Peak;
}

/** Exact: between two breaks the moment is a parabola. */
export function peakMoments(bent: BentBeam): Peaks {
  const { breaks } = bent;
  const tops = breaks.slice(1).flatMap((to, k) => topBetween(bent, breaks[k]!, to));
  const all = [...breaks, ...tops].map((at): Peak => ({ at, moment: bent.momentAt(at) }));
  const none: Peak = { at: breaks[0]!, moment: 0 };
  return {
    sagging: all.reduce((best, peak) => (peak.moment > best.moment ? peak : best), none),
    hogging: all.reduce((best, peak) => (peak.moment < best.moment ? peak : best), none),
  };
}

function topBetween({ momentAt }: BentBeam, from: Mm, to: Mm): Mm[] {
  const middle = (from + to) / 2;
  const [a, b, c] = [momentAt(from), momentAt(middle), momentAt(to)];
  const bow = a - 2 * b + c;
  const off = bow === 0 ? 1 : (a - c) / (4 * bow);
  return Math.abs(off) < 0.5 ? [middle + off * (to - from)] : [];
}
