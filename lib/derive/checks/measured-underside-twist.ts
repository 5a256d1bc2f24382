import type { Finding } from '../../model/finding.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { atMostVerdict, type CheckContext, notChecked } from './check.ts';
import { type MeasuredTop, topIn } from './measured-underside-top.ts';

/** Twist of a half over its length, 1/32 in at the long edge as for any thickness: common practice, no source. */
const WANTED: Mm = 25.4 / 32;

/** With more of it no bearer fits both ends, 1/8 in: our convention. */
const MOST: Mm = 25.4 / 8;

/** How much the slope of a half differs between the two ends, as what that makes at the long edge. */
export function measuredTwist(context: CheckContext, measured: MeasuredTop): Finding {
  const { units } = context;
  const known = measured.fit.planes.flatMap(({ plane, twist }) =>
    twist === undefined ? [] : [{ name: plane.name, twist }],
  );
  const part = topIn(measured).id;
  if (known.length === 0) return notChecked('twist', part, 'more than four readings of a half, not all on two lines');
  const { name, twist } = known.reduce((a, b) => (Math.abs(b.twist) > Math.abs(a.twist) ? b : a));
  const value = Math.abs(twist);
  const verdict = atMostVerdict(value, WANTED, MOST);
  const half = name === 'flat' ? 'the top' : `the ${name} half`;
  return {
    check: 'twist',
    verdict,
    part,
    where: name,
    value,
    limit: WANTED,
    unit: 'mm',
    because: `${half} is twisted by ${formatLength(value, units)} over its length, at the long edge; ${formatLength(WANTED, units)} is wanted`,
    fixes: verdict === 'ok' ? [] : ['scribe each frame at its own end, or plane the twist out and measure again'],
    source: 'common practice, no source',
  };
}
