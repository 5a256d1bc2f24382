import { describe, expect, test } from 'vitest';
import { checkContext, type Job, makeJob } from '../../lib/build/job.ts';
import { measuredUnderside } from '../../lib/derive/checks/measured-underside.ts';
import type { Surface } from '../../lib/geometry/surface.ts';
import type { Finding } from '../../lib/model/finding.ts';
import type { MeasuredUnderside } from '../../lib/model/records.ts';
import type { UnitSystem } from '../../lib/units/format-length.ts';
import { DESIGNS, type DesignName, jobOf, valuesOf } from '../written.ts';
import { measuredJob, moved, readings } from './measured-jobs.ts';

const INCH = 25.4;
const NAMES = ['high spots', 'halves at the ridge', 'thickness as measured', 'twist', 'day of measuring'];

/** What the check says of a job, by name. */
function said(job: Job): Record<string, Finding> {
  const context = checkContext(job.design, job.values, job.assembly, job.shop, job);
  return Object.fromEntries(measuredUnderside.run(context).map((f) => [f.check, f]));
}

/** The findings of readings of a design, bent by hand. */
function bent(
  name: DesignName,
  bend: (underside: MeasuredUnderside) => MeasuredUnderside,
  units: UnitSystem = 'in',
  made = (s: Surface): Surface => s,
): Record<string, Finding> {
  const design = { ...DESIGNS[name], units };
  const underside = bend(readings(jobOf(name), made));
  return said(makeJob(design as never, valuesOf(design), undefined, { underside }));
}

const same = (u: MeasuredUnderside): MeasuredUnderside => u;

describe('an underside as measured', () => {
  test('is fine when it is as drawn, and says nothing when it was not measured', () => {
    const found = bent('reading-table', same);
    expect(Object.keys(found)).toEqual(NAMES);
    expect(Object.values(found).map((f) => f.verdict)).toEqual(NAMES.map(() => 'ok'));
    expect(said(jobOf('reading-table'))).toEqual({});
    expect(measuredUnderside.run({} as never)).toEqual([]);
  });

  test('a high spot is named by its line and place, in inches and in millimetres', () => {
    const bump = ({ date, stations }: MeasuredUnderside): MeasuredUnderside => ({
      date,
      stations: stations.map((s, k) => (k === 4 ? { ...s, thickness: s.thickness + INCH / 16 } : s)),
    });
    const inches = bent('reading-table', bump)['high spots']!;
    expect(inches.verdict).toBe('look again');
    // Source: the residual of a reading is (1 - h) of its error, h its leverage; 1/15 at least of 15 readings.
    expect(inches.value!).toBeLessThan((INCH / 16) * (14 / 15));
    expect(inches.value!).toBeGreaterThan((INCH / 16) * 0.6);
    expect(inches.because).toMatch(
      /^line 7, 12 19\/32 in along and 10 in left, is 3\/64 in above the plane of its half, the farthest of 30 readings/,
    );
    expect(inches.fixes[0]).toMatch(/^take the high spots down: line 7,/);
    expect(bent('reading-table', bump, 'mm')['high spots']!.because).toMatch(
      /320 mm along and 254 mm left, is 1.3 mm above/,
    );
  });

  test('a hollow is told as a hollow', () => {
    const hollow = bent('reading-table', ({ date, stations }) => ({
      date,
      stations: stations.map((s, k) => (k === 12 ? { ...s, thickness: s.thickness - 2 } : s)),
    }))['high spots']!;
    expect(hollow.because).toMatch(/below the plane/);
    expect(hollow.fixes).toEqual(['nothing stands proud: scribe the bearers to the hollow, or read it again']);
  });

  test('halves that differ at the ridge by more than 1/64 in', () => {
    const found = (c: number) => said(measuredJob('reading-table', moved({ left: { c } })));
    expect(found(0.39)['halves at the ridge']!.verdict).toBe('ok');
    const step = found(1)['halves at the ridge']!;
    expect([step.verdict, step.where]).toEqual(['look again', 'reference end']);
    expect(step.value).toBeCloseTo(1, 9);
    expect(step.fixes).toEqual(['plane the left half down at the ridge, and measure again']);
    expect(found(1.6)['halves at the ridge']!.verdict).toBe('change it');
  });

  test('thickness beside 1/32 in of the design, where it is worst', () => {
    const thin = said(measuredJob('reading-table', moved({ right: { b: -1 / 508 } })))['thickness as measured']!;
    expect(thin.verdict).toBe('look again');
    expect(thin.value).toBeCloseTo(1, 9);
    expect(thin.because).toMatch(
      /^on the right edge at the \w+ end it is 1 \d+\/\d+ in thick, 3\/64 in under the 1 1\/8 in of the design/,
    );
    const thick = said(measuredJob('reading-table', moved({ right: { b: 1 / 508 } })))['thickness as measured']!;
    expect(thick.because).toMatch(/over the 1 1\/8 in/);
    expect(thick.fixes).toEqual(['take the underside down there, and measure again']);
  });

  test('twist of a half', () => {
    const twisted = bent('reading-table', ({ date, stations }) => ({
      date,
      stations: stations.map((s) =>
        s.across < 0 ? { ...s, thickness: s.thickness - (1.5 * s.along * s.across) / (2133.6 * 508) } : s,
      ),
    }))['twist']!;
    expect([twisted.verdict, twisted.where]).toEqual(['look again', 'left']);
    expect(twisted.value).toBeCloseTo(1.5, 9);
  });

  test('readings of a day before the revision', () => {
    const found = bent('reading-table', (u) => ({ ...u, date: '2026-11-24' }))['day of measuring']!;
    expect(found.verdict).toBe('look again');
    expect(found.because).toMatch(/measured on 2026-11-24, before this revision of 2026-11-25/);
    expect(bent('reading-table', (u) => ({ ...u, date: '2026-11-25' }))['day of measuring']!.verdict).toBe('ok');
  });

  test('a flat top has no ridge', () => {
    const design = DESIGNS['reading-table'];
    const changes = { 'top.edgeThickness': '2 1/4 in' };
    const found = said(measuredJob('reading-table', (s) => s, changes));
    expect(design.title).toBeTruthy();
    expect(Object.keys(found)).toEqual(NAMES.filter((n) => n !== 'halves at the ridge'));
  });
});

test('a made top is not shaped anew by a fix, but the base may still change', () => {
  const thin = measuredJob('reading-table', moved({ left: { c: -12 }, right: { c: -12 } }));
  const fixes = thin.findings.flatMap((f) => f.fixes);
  expect(fixes.filter((fix) => /^top\./.test(fix))).toEqual([]);
});
