import { describe, expect, test } from 'vitest';
import { readRecords } from '../../lib/build/read-records.ts';
import { renderIssue } from '../../lib/params/render-issue.ts';
import { type Changes, DESIGNS, type DesignName, jobOf, valuesOf } from '../written.ts';
import { moved, readings } from './measured-jobs.ts';

/** The text of readings, in mm. */
function textOf(name: DesignName, made: Parameters<typeof readings>[1], changes: Changes = {}): string {
  const { date, stations } = readings(jobOf(name, changes), made);
  const rows = stations.map((s) => `${s.along.toFixed(6)} mm,${s.across.toFixed(6)} mm,${s.thickness.toFixed(6)} mm`);
  return [`# date: ${date}`, 'along,across,thickness', ...rows].join('\n');
}

const read = (name: DesignName, text: string, changes: Changes = {}) => {
  const design = DESIGNS[name];
  return readRecords(design as never, valuesOf(design, changes) as never, { stations: { text, from: 'stations.csv' } });
};
const problems = (...args: Parameters<typeof read>): string[] =>
  (read(...args).issues ?? []).map((issue) => renderIssue(issue, 'in'));

describe('records of a design', () => {
  test('readings as designed are taken', () => {
    expect(
      read(
        'reading-table',
        textOf('reading-table', (s) => s),
      ).records!.underside!.stations,
    ).toHaveLength(30);
  });

  test('a stool has no underside to measure', () => {
    const text = '# date: 2026-12-01\nalong,across,thickness\n';
    const stool = jobOf('reading-stool');
    const has = stool.assembly.parts.some((p) => p.kind === 'top' && p.body.kind === 'panel');
    expect(problems('reading-stool', text)[0]).toMatch(has ? /no plane can be laid/ : /has no top whose underside/);
  });

  test('what is missing is said by half', () => {
    const lines = textOf('reading-table', (s) => s).split('\n');
    const oneLine = [...lines.slice(0, 2), ...lines.slice(2).filter((row) => row.startsWith('320.'))].join('\n');
    expect(problems('reading-table', oneLine)).toEqual([
      expect.stringMatching(
        /readings of the left half\n +all of them are 12 19\/32 in from the reference end; others are missing/,
      ),
      expect.stringMatching(/readings of the right half\n/),
    ]);
  });

  test('a ridge that crosses the joint of two staves inside the leg is refused with the reason', () => {
    const changes = { 'panelLeg.staves': '4' };
    // The halves differ by nothing at 9 in from the reference end and by 2.5 mm a metre beside it: the ridge runs aslant.
    const slope = 2.5e-3;
    const text = textOf('study-table', moved({ left: { a: slope, c: -slope * 228.6 } }), changes);
    const [problem] = problems('study-table', text, changes);
    expect(problem).toMatch(/the underside is as measured on 2026-12-01; that does not go with the rest\n.*crease/);
  });
});
