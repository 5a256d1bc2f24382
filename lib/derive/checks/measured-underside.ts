import type { Finding } from '../../model/finding.ts';
import type { Check, CheckContext } from './check.ts';
import { highSpots } from './measured-underside-spots.ts';
import { halvesAtRidge, measuredThickness } from './measured-underside-thickness.ts';
import { measuredTwist } from './measured-underside-twist.ts';

/**
 * The underside as it was measured after the taper, against flat planes and against the design: high spots, halves that
 * differ at the ridge, thickness, twist, and whether the readings are of this revision. Nothing to say when nothing was
 * measured.
 */
export const measuredUnderside: Check = {
  name: 'measured underside',
  run(context) {
    const { measured } = context;
    if (!measured) return [];
    return [
      highSpots(context, measured),
      ...halvesAtRidge(context, measured),
      measuredThickness(context, measured),
      measuredTwist(context, measured),
      dayOf(measured),
    ];
  },
};

/** Days compare as text. */
function dayOf({ fit: { date }, revised, nominal }: NonNullable<CheckContext['measured']>): Finding {
  const before = date < revised;
  return {
    check: 'day of measuring',
    verdict: before ? 'look again' : 'ok',
    part: nominal.parts.find(({ kind }) => kind === 'top')!.id,
    unit: '',
    because: before
      ? `the underside was measured on ${date}, before this revision of ${revised}: the readings may be of another top`
      : `the underside was measured on ${date}, and the design is of ${revised}`,
    fixes: before ? ['measure again, or give the readings the day on which they were checked'] : [],
    source: 'common practice, no source',
  };
}
