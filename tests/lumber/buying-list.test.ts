import { describe, expect, test } from 'vitest';
import design from '../../designs/reading-table/design.ts';
import shop from '../../designs/shop.ts';
import { buyingTable } from '../../lib/build/buying-table.ts';
import { makeJob } from '../../lib/build/job.ts';
import { topOf } from '../../lib/build/measured-top.ts';
import { lumberFiles } from '../../lib/build/output-lumber.ts';
import { buyingList } from '../../lib/derive/lumber/buying-list.ts';
import { servesFrom } from '../../lib/derive/lumber/zones.ts';
import { readValues } from '../../lib/params/read-values.ts';
import type { LumberWishesGiven } from '../../lib/shop/lumber-wishes.ts';
import { defineShop, type Shop } from '../../lib/shop/shop.ts';
import { parseLength } from '../../lib/units/parse-length.ts';
import { readCsv } from '../readers/csv.ts';
import { jobOf } from '../written.ts';

const INCH = 25.4;
const job = makeJob(design, readValues(design.params, design.values).values!, shop);
const list = buyingList(job.nominal, job.cutList, shop);

// Source: the wedge 2 1/4 to 1 1/8 in over 20 in with 1/16 in clean-up against the dressed thicknesses: 10/4 from
// (2 5/16 - 2 1/4)/0.05625 = 1.11, 8/4 from 10.0 exactly, 6/4 from 17.8 in. Eight strips of 5 in by 84 in: 10 in of 12/4,
// 10 of 10/4, 20 of 8/4 are 55.4 board feet against 70.0; at 70 % yield 79.2 must be bought, with 30 % added 72.0.
describe('the written buying list', async () => {
  const files = await lumberFiles(job);
  const rows = readCsv(new TextDecoder().decode(files.get('lumber/buying-list.csv')!));
  const [head, ...body] = rows as readonly (readonly string[])[];
  const column = (name: string): number => head!.findIndex((cell) => cell.startsWith(name));
  const find = (row: string, lumber = ''): readonly string[] => body.find((r) => r[0] === row && r[1] === lumber)!;
  const inches = (text: string): number => parseLength(`${text} in`) / INCH;

  test('has the zones, rounded up to 1/64 in', () => {
    const from = (lumber: string): number => inches(find('zone', lumber)[column('from center line')]!);
    expect(from('12/4')).toBe(0);
    for (const [lumber, at] of [
      ['10/4', 1.1111],
      ['8/4', 10],
      ['6/4', 17.7778],
    ] as const) {
      expect(from(lumber)).toBeGreaterThanOrEqual(at - 1e-3);
      expect(from(lumber) - at).toBeLessThan(1 / 64 + 1e-3);
    }
    expect(find('zone', '8/4').at(-1)).toMatch(/falls on a joint with nothing to spare/);
  });

  test('has net and both waste sums of the top', () => {
    const top = find('top alone');
    expect(top[column('board feet')]).toBe('55.4');
    expect(top[column('to buy at 70 % yield')]).toBe('79.2');
    expect(top[column('to buy with 30 % added')]).toBe('72');
    expect(top.at(-1)).toMatch(/^70 all in its thickest class: the zones save 20.8 %$/);
  });

  test('lines add up to classes, and classes to the total', () => {
    const sum = (kinds: readonly string[], col: string): number =>
      body.filter((r) => kinds.includes(r[0]!)).reduce((all, r) => all + Number(r[column(col)] || 0), 0);
    const total = Number(find('total')[column('board feet')]);
    expect(Math.abs(sum(['strip', 'part'], 'board feet') - total)).toBeLessThan(0.5);
    expect(sum(['class'], 'board feet')).toBeCloseTo(total, 9);
    expect(Math.abs(sum(['class'], 'to buy at') - Number(find('total')[column('to buy at')]))).toBeLessThan(0.2);
  });

  test('strips are 86 in long and told with what is to spare', () => {
    const strips = body.filter((r) => r[0] === 'strip');
    expect(strips.map((r) => r[column('L (in)')])).toEqual(strips.map(() => '86'));
    expect(strips.filter((r) => /nothing to spare; 10\/4 leaves room/.test(r.at(-1)!)).map((r) => r[1])).toEqual([
      '8/4',
    ]);
  });
});

/** The buying list of a design with other values, as a table. */
function tableOf(values: Readonly<Record<string, string>>, lumber: LumberWishesGiven = {}, own: Shop = shop) {
  const given = Object.entries(values).map(([path, text]) => ({ path, text, from: '' }));
  const made = makeJob({ ...design, lumber }, readValues(design.params, design.values, given).values!, own);
  const { columns, rows } = buyingTable(buyingList(made.nominal, made.cutList, own), made, 'in');
  const at = (head: string): number => columns.findIndex((column) => column.head.startsWith(head));
  const of = (row: string): readonly (readonly string[])[] => rows.filter((cells) => cells[0] === row);
  const sum = (row: string, head: string): number => of(row).reduce((all, cells) => all + Number(cells[at(head)]), 0);
  const remark = (row: string, lumberClass = ''): string =>
    of(row)
      .find((cells) => cells[1] === lumberClass)!
      .at(-1)!;
  return { of, sum, remark };
}

describe('what a maker adds up and reads', () => {
  test.each([{}, { 'top.layers': '2' }, { 'top.width': '37 in' }, { 'top.thickness': '2 in' }])(
    'the total is the sum of the classes as they are printed: %j',
    (values) => {
      const { sum } = tableOf(values);
      for (const head of ['board feet', 'to buy at', 'to buy with', 'price']) {
        expect(sum('total', head)).toBeCloseTo(sum('class', head), 9);
      }
    },
  );

  test('a class that is thick enough at the very edge alone serves no strip', () => {
    // Source: 6/4 dresses to 1 5/16 in, less 1/16 in: as thick as the edge, and nowhere else.
    const edge = tableOf({ 'top.edgeThickness': '1 1/4 in' });
    expect(edge.remark('zone', '6/4')).toBe('too thin everywhere but at the very edge: no strip comes out of it');
    expect(edge.remark('two layers', '6/4')).toBe(
      'as show board its glue line comes out at the lower corner of the long edge',
    );
    expect(tableOf({ 'top.edgeThickness': '1 3/16 in' }).remark('zone', '6/4')).toMatch(/from there to the edge/);
  });

  test('zones are said to save only where they do', () => {
    expect(tableOf({}).remark('top alone')).toMatch(/the zones save 20.8 %/);
    expect(tableOf({ 'top.layers': '2' }).remark('top alone')).toBe('both boards of a strip counted');
    const even = tableOf({ 'top.thickness': '1 1/2 in', 'top.edgeThickness': '1 1/2 in' });
    expect(even.remark('top alone')).toMatch(/^\S+ all in its thickest class$/);
  });

  test('the total says what is not in it, and that visits needed more than the price is for', () => {
    const none = { q12: 0, q16: 0 };
    expect(tableOf({}, {}, defineShop({ lumber: { price: none } })).remark('total')).toMatch(
      /^without .*post P1.*: nothing that the yard has is thick enough;/,
    );
    const { remark } = tableOf({});
    expect(remark('total')).not.toMatch(/without/);
    const [, more] = /the price is for what is to buy at 70 % yield; made-up visits needed more: (\S+) in 80/.exec(
      remark('total'),
    )!;
    expect(Number(more)).toBeGreaterThan(tableOf({}).sum('total', 'to buy at'));
    const low = defineShop({ lumber: { yield: 30 } });
    expect(tableOf({}, {}, low).remark('total')).not.toMatch(/made-up visits needed more/);
  });

  test('a wish for two boards in each strip that the drawing does not follow is told', () => {
    expect(tableOf({}, { layers: 'two' }).remark('layers')).toMatch(/the list asks for single boards$/);
    expect(tableOf({ 'top.layers': '2' }, { layers: 'two' }).of('layers')).toEqual([]);
    expect(tableOf({}, { layers: 'either' }).of('layers')).toEqual([]);
  });
});

describe('zones', () => {
  test('a glue line comes out of the slope where the wedge is as thick as it is deep', () => {
    // Source: (Tc - d)/s: 20.0 for 1 1/8 in, 17.8 for 1 1/4, 13.3 for 1 1/2; under 1 1/8 it shows on the long edge.
    const { body } = topOf(job.nominal)!;
    const at = (depth: number) => servesFrom(body, depth * INCH);
    expect(at(1.125)! / INCH).toBeCloseTo(20, 9);
    expect(at(1.25)! / INCH).toBeCloseTo(17.7778, 4);
    expect(at(1.5)! / INCH).toBeCloseTo(13.3333, 4);
    expect(at(1.1)).toBeUndefined();
    expect(at(2.25)).toBe(0);
  });

  test('without 10/4, 12/4 is needed out to 10 in', () => {
    expect(list.without.find((w) => w.lumber === '10/4')).toMatchObject({
      instead: '12/4',
      outTo: expect.closeTo(254, 6),
    });
    const without = defineShop({ lumber: { price: { q10: 0 } } });
    const other = buyingList(job.nominal, job.cutList, without);
    expect(other.rows.filter((r) => r.lumber === '10/4')).toEqual([]);
    const more = other.total.boardFeet - list.total.boardFeet;
    expect(more).toBeCloseTo(list.without.find((w) => w.lumber === '10/4')!.more, 9);
  });

  test('a board that is ripped on the center line is one board, as wide as both halves', () => {
    const meeting = jobOf('meeting-table');
    const { rows, total } = buyingList(meeting.nominal, meeting.cutList, shop);
    const strips = rows.filter((row) => row.isStrip);
    expect(strips.reduce((all, row) => all + row.pieces, 0)).toBe(7);
    // 160 mm finished, 5 mm of width allowance on each half.
    expect(strips.find((row) => row.marks.includes('T4A'))).toMatchObject({
      marks: ['T4A', 'T4B'],
      pieces: 1,
      width: 170,
    });
    expect(total.boardFeet).toBeGreaterThan(60);
  });

  test('a top of other sizes, in millimetres', () => {
    const meeting = jobOf('meeting-table');
    const { zones } = buyingList(meeting.nominal, meeting.cutList, shop);
    // Source: 50 mm falling by 22 mm over 480 mm, 2 mm clean-up; 8/4 dresses to 44.45 mm: (52 - 44.45)/(22/480).
    expect(zones.find((z) => z.lumber.id === '8/4')!.from).toBeCloseTo((52 - 44.45) / (22 / 480), 6);
  });
});
