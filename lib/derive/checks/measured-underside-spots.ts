import type { Finding } from '../../model/finding.ts';
import type { StationFit } from '../../model/underside-fit.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { atMostVerdict, type CheckContext } from './check.ts';
import { type MeasuredTop, topIn } from './measured-underside-top.ts';

/** A frame may stand off the underside by this much, 1/64 in: common practice, no source. */
export const FRAME_GAP: Mm = 25.4 / 64;

/** Readings this far off no scribing takes up, 1/16 in: common practice, no source. */
const MOST: Mm = 25.4 / 16;

/** Spots that a sentence has room for. */
const NAMED = 3;

/** The reading that lies farthest off its plane; and where wood stands proud, so that a bearer would rock on it. */
export function highSpots(context: CheckContext, measured: MeasuredTop): Finding {
  const { stations, planes } = measured.fit;
  const off = stations.toSorted((a, b) => Math.abs(b.residual) - Math.abs(a.residual));
  const worst = off[0]!;
  const value = Math.abs(worst.residual);
  const verdict = atMostVerdict(value, FRAME_GAP, MOST);
  const high = off.filter(({ residual }) => residual > FRAME_GAP);
  const rms = planes.map(({ plane, rms }) => `${plane.name} ${fine(context, rms)}`).join(', ');
  // A reading on the ridge belongs to both halves: it is named once.
  const places = [...new Set(high.map((spot) => place(context, spot)))];
  const spots = places.slice(0, NAMED);
  const more = places.length > NAMED ? ` and ${places.length - NAMED} more` : '';
  const rows = new Set(stations.map(({ station }) => station.row)).size;
  const again = verdict === 'change it' ? `read line ${worst.station.row} again; if it holds, ` : '';
  const advice =
    high.length > 0
      ? `${again}take the high spots down: ${spots.join('; ')}${more}`
      : 'nothing stands proud: scribe the bearers to the hollow, or read it again';
  return {
    check: 'high spots',
    verdict,
    part: topIn(measured).id,
    where: `line ${worst.station.row}`,
    value,
    limit: FRAME_GAP,
    unit: 'mm',
    because: `${place(context, worst)}, is ${fine(context, value)} ${worst.residual > 0 ? 'above' : 'below'} the plane of its half, the farthest of ${rows} readings; ${fine(context, FRAME_GAP)} is wanted (root mean square: ${rms})`,
    fixes: verdict === 'ok' ? [] : [advice],
    source: 'common practice, no source',
  };
}

const fine = ({ units }: CheckContext, mm: Mm): string => formatLength(mm, units);

/** "line 7, 14 in along and 5 in left". */
function place(context: CheckContext, { station: { row, along, across } }: StationFit): string {
  const side =
    across === 0 ? 'on the center line' : `${fine(context, Math.abs(across))} ${across < 0 ? 'left' : 'right'}`;
  return `line ${row}, ${fine(context, along)} along and ${side}`;
}
