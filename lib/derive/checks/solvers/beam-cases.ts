import type { Mm } from '../../../units/mm.ts';
import type { Beam, BeamCase, BeamLoad } from './beam.ts';
import { weightOf } from './mass.ts';

/** What a top or bench has to bear, apart from its own weight. */
export interface BeamDuty {
  /** kg spread over the whole top. */
  readonly spread: number;
  /** N on one spot, for a short time. */
  readonly spot: number;
  /** kg of a person at the very end. */
  readonly person: number;
}

/** The load cases of a top seen as a beam. */
export type BeamCaseName = 'own weight' | 'spread' | 'spot at the middle' | 'spot at the end' | 'person at the end';

/**
 * The cases as data, to be judged one by one or added up; the end is that with the longer overhang.
 *
 * @param ownWeight N/mm.
 */
export function beamCases(beam: Beam, ownWeight: number, duty: BeamDuty): (BeamCase & { name: BeamCaseName })[] {
  const [left, right] = beam.supports;
  const end = beam.length - right > left ? beam.length : 0;
  const point = (at: Mm, force: number): BeamLoad[] => [{ kind: 'point', at, force }];
  const even = (perLength: number): BeamLoad[] => [{ kind: 'even', perLength }];
  return [
    { name: 'own weight', loads: even(ownWeight) },
    { name: 'spread', loads: even(weightOf(duty.spread) / beam.length) },
    { name: 'spot at the middle', loads: point((left + right) / 2, duty.spot) },
    { name: 'spot at the end', loads: point(end, duty.spot) },
    { name: 'person at the end', loads: point(end, weightOf(duty.person)) },
  ];
}
