import { describe, expect, test } from 'vitest';
import { checkContext } from '../../lib/build/job.ts';
import { cutsInStock } from '../../lib/derive/checks/cuts-in-stock.ts';
import { brokenRules } from '../../lib/params/broken-rules.ts';
import type { Value } from '../../lib/params/param.ts';
import { setPath } from '../../lib/params/values.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { trestleParams } from '../../lib/tables/trestle/spec.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';
import type { TrestleValues } from '../../lib/tables/trestle/values.ts';
import { type Changes, DESIGNS, valuesOf } from '../written.ts';

type Design = 'reading-table' | 'meeting-table' | 'study-table';

interface Case {
  readonly why: string;
  readonly design: Design;
  /** Read as one would type them; allowed. */
  readonly changes?: Changes;
  /** mm or as the parameter is; set past all rules. */
  readonly wrong: Readonly<Record<string, Value>>;
  /** What the cut that cannot be made is. */
  readonly cut: RegExp;
}

// Each rule refuses what cannot be made: built in spite of it, a cut comes out in the wrong place.
const CASES: readonly Case[] = [
  {
    why: 'a stretcher needs room for the mortises in its two ends',
    design: 'meeting-table',
    wrong: { 'frame.inset': 1150 },
    cut: /stretcher S1: cut .* breaks through/,
  },
  {
    why: 'the mortises of lower rail and stretcher would meet inside the post',
    design: 'meeting-table',
    wrong: { 'frameJoint.tenonDepth': 44 },
    cut: /post P1: cut .* breaks through lower-rail/,
  },
  {
    why: 'would meet the one in the lower end of the post',
    design: 'reading-table',
    wrong: { 'stretcher.height': 139.7 },
    cut: /post P1: cut lower-rail-post-1 breaks through/,
  },
  {
    why: 'would meet the one in the upper end of the post',
    design: 'reading-table',
    wrong: { 'stretcher.height': 556 },
    cut: /post P1: cut lower-rail-post-1 breaks through/,
  },
  {
    why: 'the mortise of the stretcher would meet those in the ends of the lower rail',
    design: 'reading-table',
    wrong: { 'post.spacing': 169 },
    cut: /lower rail R1: cut .* breaks through/,
  },
  {
    why: 'the mortises of the stretchers would meet those in the ends of the lower rail',
    design: 'reading-table',
    changes: { 'stretcher.count': '2' },
    wrong: { 'stretcher.spacing': 360 },
    cut: /lower rail R1: cut .* breaks through/,
  },
  {
    why: 'the mortises of stretcher and upper rail would meet inside the post',
    design: 'meeting-table',
    changes: {
      'lowerRail.use': 'no',
      'lowerRail.depth': '1 in',
      'upperRail.depth': '200 mm',
      'stretcher.depth': '200 mm',
    },
    wrong: { 'frameJoint.railTenonWidth': 180, 'frameJoint.tenonDepth': 42, 'stretcher.height': 450 },
    cut: /post P1: cut .* breaks through upper-rail/,
  },
  {
    why: 'room for the mortises in its ends',
    design: 'reading-table',
    changes: { 'stretcher.count': '0', 'lowerRail.use': 'no' },
    wrong: { 'table.height': 331, 'foot.height': 90, 'bearer.depth': 95, 'frameJoint.tenonDepth': 60 },
    cut: /post P1: cut post-1-foot breaks through/,
  },
  {
    why: 'the slots must come out beside the relief',
    design: 'study-table',
    changes: { 'fixing.perSide': '5' },
    wrong: { 'bearer.reliefWidth': 80 },
    cut: /cleat C1: cut a-fixing-\d cannot be made; its far end runs over the border of/,
  },
  {
    why: 'screws with their slots must keep clear of each other',
    design: 'reading-table',
    changes: { 'fixing.perSide': '6', 'moisture.fitting': '3 %', 'moisture.low': '3 %', 'fixing.fromEnds': '3 in' },
    wrong: { 'moisture.high': 20, 'fixing.washer': 24, 'fixing.fromEnds': 190 },
    cut: /bearer B1: cut a-fixing-\d+-counterbore/,
  },
  {
    why: 'the last slot must stay inside the end of the bearer',
    design: 'reading-table',
    wrong: { 'bearer.endRound': 60, 'fixing.fromEnds': 40 },
    cut: /bearer B1: cut a-fixing-1-counterbore cannot be made/,
  },
  {
    why: 'it must be wider than the hole for the screw',
    design: 'reading-table',
    changes: { 'fixing.gauge': '14' },
    wrong: { 'fixing.washer': 5 },
    cut: /bearer B1: cut a-fixing-3 cannot be made; its mouth runs over the border of a-fixing-3-counterbore.floor/,
  },
  {
    why: 'the screws into the leg sit at half its depth',
    design: 'study-table',
    changes: { 'cleat.depth': '4 in', 'top.thickness': '3 in' },
    wrong: { 'cleat.depth': 70 },
    cut: /cleat C1: cut cleat-fixing-\d-counterbore/,
  },
];

const allowed = ({ design, changes }: Case): TrestleValues =>
  valuesOf(DESIGNS[design], changes) as unknown as TrestleValues;

describe.each(CASES)('$why', (rule) => {
  const start = allowed(rule);
  const wrong = Object.entries(rule.wrong).reduce(
    (values, [path, value]) => setPath(trestleParams, values, path, value),
    start,
  );

  test('is refused, and was not before', () => {
    expect(brokenRules(trestleParams, start)).toEqual([]);
    expect(brokenRules(trestleParams, wrong).map((problem) => problem.because)).toContainEqual(
      expect.stringContaining(rule.why),
    );
  });

  test('could not be made', () => {
    const context = checkContext(DESIGNS[rule.design], wrong as never, trestleTable(wrong), defineShop());
    const said = cutsInStock.run(context).filter((f) => f.verdict === 'change it');
    expect(said.map((f) => f.because)).toContainEqual(expect.stringMatching(rule.cut));
  });
});
