import type { Station } from '../model/records.ts';
import type { Issue } from '../params/issue.ts';
import { formatLength, type UnitSystem } from '../units/format-length.ts';
import type { NoFit } from './fit-underside.ts';
import { inTable } from './table-issue.ts';

/** What to measure for want of readings. */
const MORE = 'take five readings from the center line to the edge on three lines: near both ends and in the middle';

/** Why readings make no underside, and which are missing or wrong. */
export function noFitIssue({ plane, why, stations }: NoFit, from: string, units: UnitSystem): Issue {
  const half = plane === 'flat' ? 'the top' : `the ${plane} half`;
  const at = (mm: number): string => formatLength(mm, units);
  const first = stations[0];
  const because = {
    few: `${stations.length === 0 ? 'there are none' : `there are ${stations.length}`}; three are needed, and not on one line`,
    'line along x': `all of them are ${first && at(Math.abs(first.across))} from the center line; others are missing, nearer and farther from it`,
    'line along y': `all of them are ${first && at(first.along)} from the reference end; others are missing, at other places along the top`,
    line: 'all of them are on one line; others are missing beside it',
    valley: `it would lie over the other one: ${linesOf(stations)} make it thicker towards the long edge`,
    thin: `some corner of the top would be thinner than 3 mm; one of ${linesOf(stations)} must be wrong`,
  }[why];
  const tries = why === 'valley' || why === 'thin' ? { try: 'measuring again' } : { try: `more readings: ${MORE}` };
  return inTable(half, from, { code: 'no-fit', because, ...tries });
}

function linesOf(stations: readonly Station[]): string {
  const rows = stations.map(({ row }) => row);
  return `lines ${Math.min(...rows)} to ${Math.max(...rows)}`;
}
