import { describe, expect, test } from 'vitest';
import type { Finding } from '../../lib/model/finding.ts';
import { findingNumbers } from '../../lib/model/finding-number.ts';
import type { UnitSystem } from '../../lib/units/format-length.ts';
import { jobOf } from '../drawings/sheet-jobs.ts';

/** What is printed of a finding, but for the source of its limit, which speaks as the publication does. */
function textsOf(finding: Finding, units: UnitSystem): string[] {
  const { because, fixes, load = '', assumptions = [] } = finding;
  return [because, ...fixes, load, ...assumptions, ...Object.values(findingNumbers(finding, units))];
}

const METRIC = /(?<![-\w])[\d.]+ ?(?:kg|N|mm|MPa|N m)\b/;
const INCH = /(?<![-\w])[\d./]+ ?(?:lb|lbf|psi|in|lbf ft)\b/;

describe('what the checks print', () => {
  test.each(['reading-table', 'study-table', 'reading-stool'] as const)(
    '%s, in inches, speaks of no kg, N or mm',
    (name) => {
      const { findings } = jobOf(name, [], {}, 'checked');
      const texts = findings.flatMap((finding) => textsOf(finding, 'in'));
      expect(texts.filter((text) => METRIC.test(text))).toEqual([]);
      expect(texts.filter((text) => /\d lbf?\b/.test(text)).length).toBeGreaterThan(4);
    },
  );

  test('meeting-table, in millimetres, speaks of no pounds and inches', () => {
    const { findings } = jobOf('meeting-table', [], {}, 'checked');
    const texts = findings.flatMap((finding) => textsOf(finding, 'mm'));
    expect(texts.filter((text) => INCH.test(text))).toEqual([]);
    expect(texts.filter((text) => / (?:kg|N)\b/.test(text)).length).toBeGreaterThan(10);
  });

  test('as data all of it stays in kg, N, mm and MPa', () => {
    const units = (name: 'reading-table' | 'meeting-table'): string[] => [
      ...new Set(jobOf(name, [], {}, 'checked').findings.map(({ unit }) => unit)),
    ];
    for (const name of ['reading-table', 'meeting-table'] as const) {
      expect(units(name)).toEqual(expect.arrayContaining(['mm', 'kg', 'N']));
      expect(units(name).filter((unit) => /^(?:in|lbf?|psi)$/.test(unit))).toEqual([]);
    }
  });
});
