import { expect, it } from 'vitest';
import study from '../../designs/study-table/design.ts';
import { cutList } from '../../lib/derive/cut-list/cut-list.ts';
import { readValues } from '../../lib/params/read-values.ts';

const boards = (showLayer: string) => {
  const override = { path: 'top.showLayer', text: showLayer, from: '--set' };
  const values = readValues(study.params, study.values, [override]).values!;
  return cutList(study.compose(values, study.title)).rows.filter((row) => row.kind === 'strip');
};

it('leaves out an under board that nobody could mill, and makes the show board of its strip thicker', () => {
  // 15 in from the center line to the edge, 2 in to 1 in: the outer strip is 1 1/3 in thick at its inner edge, so under
  // a show board of 1 1/4 in there would be 1/12 in.
  const outer = boards('1 1/4 in').filter((row) => row.marks.some((mark) => /^T[16]/.test(mark)));
  expect(outer.map((row) => row.marks)).toEqual([['T1', 'T6']]);
  expect(outer[0]!.finished.thickness).toBeCloseTo((4 / 3) * 25.4, 9);
});

it('keeps an under board that can be milled', () => {
  const under = boards('1 in').filter((row) => row.name === 'strip, under board');
  expect(under.flatMap((row) => row.marks).sort()).toEqual(['T1U', 'T2U', 'T3U', 'T4U', 'T5U', 'T6U']);
  expect(Math.min(...under.map((row) => row.finished.thickness))).toBeCloseTo(25.4 / 3, 9);
});
