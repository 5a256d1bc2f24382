import { describe, expect, it } from 'vitest';
import { seasons } from '../../lib/derive/checks/seasons.ts';
import { expectPrinted } from '../printed.ts';
import type { Changes } from '../written.ts';
import { handContext, words } from './contexts.ts';
import { boards, flat } from './trial-pieces.ts';
import { at, GOLDEN, tried } from './tried.ts';

const of = (changes: Changes, where: string) => at(seasons.run(tried('reading-table', changes)), 'seasons', where);

describe('seasons', () => {
  it('widen the reading-room table by 15.1 mm, 15.3 by the second form', () => {
    const width = of({}, 'width');
    expectPrinted(width.value!, '15.11808', 'by the coefficient');
    expectPrinted(width.range![1], '15.33449', 'by the shrinkage');
  });

  it('cup one of its staves by 0.197 mm, 0.185 exactly', () => {
    const stave = of({}, 'cup of one board');
    expectPrinted(stave.value!, '0.1967738', 'small angles', 1e-6);
    expectPrinted(stave.range![0], '0.1854913', 'exactly', 1e-6);
  });

  it('cup it by 7.5 mm with one face drier by 1 %', () => {
    expectPrinted(of({}, 'one face drier').value!, '7.465719', 'one-sided', 1e-6);
  });

  it('open the shoulders at its posts by 0.41 mm when it dries by 4 %', () => {
    const dry = { ...GOLDEN, 'moisture.fitting': '9 %' };
    expectPrinted(of(dry, 'frame-a/lower-rail-post-1').value!, '0.409448', 'shoulder', 1e-6);
  });

  it('say so, in inches and metric', () => {
    expect(seasons.run(tried('reading-table')).map(words)).toMatchInlineSnapshot(`
      [
        "ok | top T: from dry winter (5 %) to damp summer (11 %) it widens 19/32 in",
        "ok | strip T1: 5 in wide, it cups 0.008 in by itself as it dries from 11 to 5 %, hollow on the bark side",
        "ok | top T: one face 1 % drier than the other would cup it 19/64 in if it were free: finish both faces alike",
        "ok | post P1: 3 1/4 in across its grain, in a dry winter (5 %) it draws back 0.01 in from the shoulder of lower rail R1; none of the 6 shoulders opens more",
      ]
    `);
    expect(seasons.run(tried('meeting-table')).map(words)).toMatchInlineSnapshot(`
      [
        "ok | top T: from dry winter (5 %) to damp summer (11 %) it widens 21 mm",
        "ok | strip T1: 150 mm wide, it cups 0.4 mm by itself as it dries from 11 to 5 %, hollow on the bark side",
        "ok | top T: one face 1 % drier than the other would cup it 10.8 mm if it were free: finish both faces alike",
        "ok | post P1: 90 mm across its grain, in a dry winter (5 %) it draws back 0.4 mm from the shoulder of upper rail U1; none of the 12 shoulders opens more",
      ]
    `);
  });

  it('look at panel legs once for legs alike, and at the seat of a stool', () => {
    const study = seasons.run(tried('study-table')).filter((f) => f.where === 'width');
    expect(study.map((f) => f.part)).toEqual(['frame-a/panel', 'top']);
    expect(seasons.run(tried('reading-stool')).map(words)).toMatchInlineSnapshot(`
      [
        "ok | seat A: from dry winter (5 %) to damp summer (11 %) it widens 11/64 in",
        "ok | seat A: 10 in wide, it cups 0.027 in by itself as it dries from 11 to 5 %, hollow on the bark side",
        "ok | seat A: one face 1 % drier than the other would cup it 0.027 in if it were free: finish both faces alike",
        "ok | side B1: 1 1/4 in across its grain, in a dry winter (5 %) it draws back 0.004 in from the shoulder of stretcher C; none of the 2 shoulders opens more",
      ]
    `);
  });

  it('leave the cup of a stave out when boards are not flat-sawn', () => {
    const quarter = seasons.run(tried('reading-table', { 'moisture.sawn': 'quarter' }));
    expect(quarter.map((f) => f.where)).toEqual(['width', 'one face drier', 'frame-a/lower-rail-post-1']);
    expect(quarter[0]!.value).toBeLessThan(15);
  });

  it('are numbers, all ok, that grow with the range of moisture', () => {
    const usual = seasons.run(tried('reading-table'));
    const wet = seasons.run(tried('reading-table', { 'moisture.high': '13 %' }));
    expect([...usual, ...wet].every((f) => f.verdict === 'ok' && f.fixes.length === 0)).toBe(true);
    expect(wet[0]!.value! / usual[0]!.value!).toBeCloseTo(8 / 6, 9);
  });

  it('find nothing in a board', () => {
    const found = seasons.run(handContext(boards({ id: 'board', at: flat(0, 0, 0) })));
    expect(found.map(words)).toEqual(['ok | nothing in it is wide enough to mind the seasons']);
  });
});
