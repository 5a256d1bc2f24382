import { describe, expect, test } from 'vitest';
import { cutListCsv } from '../../lib/build/cut-list-table.ts';
import { cutPlanTable } from '../../lib/build/cut-plan-table.ts';
import { paperPlan } from '../../lib/build/lumber-plan.ts';
import { listFiles } from '../../lib/build/output-lists.ts';
import { lumberFiles } from '../../lib/build/output-lumber.ts';
import { checkCutPlan } from '../../lib/derive/lumber/cut-plan/check-cut-plan.ts';
import { marksInText } from '../lists/marks-in-text.ts';
import { csvRows } from '../readers/csv.ts';
import { metricWithBoards } from './metric-boards.ts';
import { readingWithBoards } from './reading-boards.ts';

const text = (bytes: Uint8Array | undefined): string => new TextDecoder().decode(bytes);

describe.each([
  ['inches', readingWithBoards()],
  ['millimetres', metricWithBoards()],
] as const)('one rough size on every paper, in %s', async (_, job) => {
  const { units } = job.design;
  const [lists, files] = [await listFiles(job), await lumberFiles(job)];
  const list = csvRows(text(lists.get('cut-list.csv')));
  const bought = csvRows(text(files.get('lumber/buying-list.csv')));
  const cut = csvRows(text(files.get('lumber/cut-plan.csv'))).filter((row) => row['row'] === 'part');
  const rowOf = (mark: string) => list.find((row) => marksInText(row['part']!).includes(mark))!;

  test('every part is cut to the text of the cut list', () => {
    expect(cut.length).toBeGreaterThan(9);
    for (const row of cut) {
      const listed = rowOf(row['what']!);
      expect([row['what'], row[`L (${units})`], row[`W (${units})`]]).toEqual([
        row['what'],
        listed[`rough length (${units})`],
        listed[`rough width (${units})`],
      ]);
    }
  });

  test('and asked for in the buying list', () => {
    const rows = bought.filter((row) => row['row'] === 'part' || row['row'] === 'strip');
    expect(rows.length).toBeGreaterThan(6);
    for (const row of rows) {
      const listed = rowOf(/[A-Z]+\d+[A-Z]?/.exec(row['parts']!)![0]);
      // Both halves of a board over the center line are bought as one.
      const widths = row['parts']!.includes('A, ') ? 'both halves' : row[`W (${units})`];
      expect([row['parts'], row[`T (${units})`], widths, row[`L (${units})`]]).toEqual([
        row['parts'],
        listed[`rough thickness (${units})`],
        widths === 'both halves' ? widths : listed[`rough width (${units})`],
        listed[`rough length (${units})`],
      ]);
    }
  });

  test('cuts and places are on the same steps, and nothing is lost by that', async () => {
    const { cuts } = await paperPlan(job);
    for (const { job: own, progress } of cuts) expect(checkCutPlan(own.problem, progress.plan!)).toEqual([]);
    const places = cutPlanTable({ cuts, wanted: [], stopped: false, buying: undefined as never }, units)
      .rows.flatMap((cells) => cells.slice(4, 8))
      .filter(Boolean);
    // Sixteenths in lowest terms, or whole millimetres.
    const step = units === 'in' ? /^\d+$|^(\d+ )?\d+\/(2|4|8|16)$/ : /^\d+$/;
    expect(places.filter((cell) => !step.test(cell))).toEqual([]);
  });
});

test('both systems of the cut list tell one size: the one in the units of the design', () => {
  for (const job of [readingWithBoards(), metricWithBoards()]) {
    const { units } = job.design;
    const { header, rows } = cutListCsv(job.cutList, units);
    const column = (head: string): number => header.indexOf(head);
    for (const [k, cells] of rows.entries()) {
      const mm = Number(cells[column('rough length (mm)')]);
      const step = units === 'in' ? 25.4 / 16 : 1;
      expect(mm).toBeGreaterThanOrEqual(job.cutList.rows[k]!.rough.length - 1e-3);
      expect(mm - job.cutList.rows[k]!.rough.length).toBeLessThan(step);
      expect(Math.abs(mm / step - Math.round(mm / step))).toBeLessThan(1e-3);
    }
  }
});
