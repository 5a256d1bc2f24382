import type { Mm } from '../../../units/mm.ts';
import { inRange, positive } from '../../../wood/in-range.ts';
import type { Beam, BeamLoad } from './beam.ts';

/** A beam under loads that act together. */
export interface BentBeam {
  /** N that the supports press upward; negative where one holds the beam down. */
  readonly reactions: readonly [number, number];
  /** N mm at a distance from the end; positive when the lower side is pulled. */
  momentAt(x: Mm): number;
  /** Downward. */
  deflectionAt(x: Mm): Mm;
  /** Where the moment can be greatest or change its course, ascending. */
  readonly breaks: readonly Mm[];
}

/** From `at` on, the moment grows by `slope` d + `curve` d², d the distance from there. */
interface Term {
  readonly at: Mm;
  readonly slope: number;
  readonly curve: number;
}

/**
 * Moments, reactions and deflections, exact for any number of loads: each adds its terms to the moment from where it
 * begins, and E I w'' = -M is integrated term by term (the bracket method of Clebsch and Macaulay).
 *
 * @throws RangeError when supports or loads do not lie on the beam.
 */
export function bendBeam(beam: Beam, loads: readonly BeamLoad[]): BentBeam {
  const [left, right] = beam.supports;
  inRange('first support', left, 0, beam.length, ' mm');
  inRange('second support', right, left, beam.length, ' mm');
  const span = positive('span', right - left, ' mm');
  const pressing = loads.flatMap((load) => termsOf(beam, load));
  const far = sum(pressing, (t) => moment(t, beam.length) + force(t, beam.length) * (left - beam.length)) / span;
  const near = -sum(pressing, (t) => force(t, beam.length)) - far;
  const terms = [...pressing, { at: left, slope: near, curve: 0 }, { at: right, slope: far, curve: 0 }];
  const stiffness = positive('E', beam.e, ' MPa') * positive('I', beam.inertia, ' mm⁴');
  const free = (x: Mm): number => -sum(terms, (t) => bend(t, x)) / stiffness;
  const [atLeft, tilt] = [free(left), (free(right) - free(left)) / span];
  return {
    reactions: [near, far],
    momentAt: (x) => sum(terms, (t) => moment(t, inRange('place', x, 0, beam.length, ' mm'))),
    deflectionAt: (x) => free(inRange('place', x, 0, beam.length, ' mm')) - atLeft - tilt * (x - left),
    breaks: [...new Set([0, ...terms.map((t) => t.at), beam.length])].sort((a, b) => a - b),
  };
}

function termsOf({ length }: Beam, load: BeamLoad): Term[] {
  if (load.kind === 'point') {
    return [{ at: inRange('load', load.at, 0, length, ' mm'), slope: -load.force, curve: 0 }];
  }
  const from = inRange('start of the load', load.from ?? 0, 0, length, ' mm');
  const to = inRange('end of the load', load.to ?? length, from, length, ' mm');
  return [
    { at: from, slope: 0, curve: -load.perLength / 2 },
    { at: to, slope: 0, curve: load.perLength / 2 },
  ];
}

const sum = (terms: readonly Term[], f: (term: Term) => number): number => terms.reduce((s, t) => s + f(t), 0);

function moment({ at, slope, curve }: Term, x: Mm): number {
  const d = Math.max(0, x - at);
  return (slope + curve * d) * d;
}

/** Slope of the moment: the shear force. */
const force = ({ at, slope, curve }: Term, x: Mm): number => (x < at ? 0 : slope + 2 * curve * (x - at));

/** The moment integrated twice. */
function bend({ at, slope, curve }: Term, x: Mm): number {
  const d = Math.max(0, x - at);
  return (slope / 6 + (curve * d) / 12) * d ** 3;
}
