import design from '../../designs/meeting-table/design.ts';
import shop from '../../designs/shop.ts';
import { type Job, makeJob } from '../../lib/build/job.ts';
import { readRecords } from '../../lib/build/read-records.ts';
import { readValues } from '../../lib/params/read-values.ts';

/** A pile for the meeting table, white oak in millimetres, invented. */
const BOARDS = `mark,thickness,width,length,bark,tone,defects
A1,54 mm,178 mm,2520 mm,A,light,
A2,53 mm,140 mm,2500 mm,B,medium,knot 300 mm..340 mm x 20 mm..50 mm face A 8 mm deep
A3,53 mm,132 mm,2460 mm,A,0.4,
A4,52 mm,165 mm,2600 mm,B,0.5,
B1,45 mm,160 mm,2500 mm,A,0.5,
B2,44 mm,150 mm,2480 mm,B,0.6,
B3,44 mm,148 mm,2700 mm,A,dark,
B4,45 mm,162 mm,2450 mm,B,light,check 0 mm..60 mm through
B5,43 mm,155 mm,2520 mm,A,0.3,
C1,54 mm,200 mm,2400 mm,A,0.5,
C2,46 mm,210 mm,3300 mm,A,0.5,
C3,72 mm,210 mm,1800 mm,A,0.5,
C4,73 mm,120 mm,1700 mm,A,0.5,
`;

/** The meeting table, seven strips with one over the center line, with boards to cut it from. */
export function metricWithBoards(text = BOARDS): Job {
  const values = readValues(design.params, design.values).values!;
  const { records, issues } = readRecords(design, values, { boards: { text, from: 'boards.csv' } });
  if (!records) throw new Error(JSON.stringify(issues));
  return makeJob(design, values, shop, records);
}
