import { describe, expect, test } from 'vitest';
import { halfTop } from '../../lib/derive/drawings/sheets/half-top.ts';
import { cutStation } from '../../lib/derive/drawings/sheets/top-cuts.ts';
import { topSection } from '../../lib/derive/drawings/sheets/top-section.ts';
import { VIEWS } from '../../lib/derive/drawings/view.ts';
import { type DesignName, jobOf } from './sheet-jobs.ts';

const IN = 25.4;

function half(name: DesignName, side: 1 | -1, sets: readonly string[] = []) {
  const { assembly } = jobOf(name, sets);
  const top = topSection(assembly)!;
  return halfTop(assembly, top, VIEWS.end, side, cutStation(assembly, top));
}

describe('a half of a top, cut through its slots', () => {
  // t(x) = 2 1/4 - (2 1/4 - 1 1/8) x / 20, in; stations every 5 in from the center line.
  test('has the thickness of the taper at every joint, and the height under it', () => {
    const { columns } = half('reading-table', 1);
    expect(columns.map(({ out }) => out / IN)).toEqual([0, 5, 10, 15, 20].map((x) => expect.closeTo(x, 9)));
    for (const { out, thickness, underside } of columns) {
      expect(thickness / IN).toBeCloseTo(2.25 - (1.125 * out) / IN / 20, 9);
      expect((thickness + underside) / IN).toBeCloseTo(29.5, 9);
    }
  });

  // cover = t(|x| + p) - (d + a/2): p 1, d 5/8, a 3/8; 1.381, 1.1, 0.819, 0.5375 in.
  test('has the cover of each slot at its thin end', () => {
    const expected = [0, 5, 10, 15].map((x) => 2.25 - (1.125 * (x + 1)) / 20 - (0.625 + 0.1875));
    for (const side of [1, -1] as const) {
      expect(half('reading-table', side).slots.map(({ cover }) => cover / IN)).toEqual(
        expected.map((c) => expect.closeTo(c, 9)),
      );
    }
  });

  test('has stations to measure at where no joint is, and one name for boards that lie over each other', () => {
    const { columns, strips } = half('study-table', 1);
    expect(columns.filter(({ seam }) => !seam).map(({ out }) => out / IN)).toEqual(
      [3.75, 7.5, 11.25].map((x) => expect.closeTo(x, 9)),
    );
    expect(strips.map(({ marks }) => marks.join(' ')).sort()).toEqual(['T1', 'T2S T2U', 'T3S T3U']);
  });

  test('has no slots in plain joints', () => {
    expect(half('reading-table', 1, ['edgeJoint.tenons=no']).slots).toEqual([]);
  });
});
