import { describe, expect, it } from 'vitest';
import { expectPrinted, INCH } from '../printed.ts';
import { csvRows } from '../readers/csv.ts';
import { type Changes, DESIGN_NAMES, type DesignName, written } from '../written.ts';

async function billOf(name: DesignName, changes: Changes = {}) {
  const build = await written(name, changes, ['lists', 'model']);
  const { assembly } = build.json('model.json');
  const text = build.text('bill-of-materials.csv');
  return {
    text,
    rows: csvRows(text),
    bill: build.json('bill-of-materials.json'),
    list: csvRows(build.text('cut-list.csv')),
    joints: assembly.joints as { kind: string; tenons: string[]; glueArea: number }[],
    fixings: assembly.fixings as { screw: { gauge: number; length: number } }[],
  };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

const SQUARE = { 'top.showEdge': 'square', 'top.undersideEdge': 'square' };

describe.each(DESIGN_NAMES)('the bill of materials of the %s, by the grammar of RFC 4180', (name) => {
  it('has as many tenons as the joints, screws and washers as the fixings', async () => {
    const { rows, bill, joints, fixings } = await billOf(name);
    const quantity = (item: string): number =>
      sum(rows.filter((row) => row['item'] === item).map((row) => Number(row['quantity'])));
    expect(quantity('loose tenons')).toBe(sum(joints.map((joint) => joint.tenons.length)));
    expect(quantity('wood screws')).toBe(fixings.length);
    expect(quantity('washers')).toBe(fixings.length);
    expect(sum(bill.tenons.map((need: { quantity: number }) => need.quantity))).toBe(quantity('loose tenons'));
  });

  it('has the board feet of the cut list, by wood and class, and rounds them up', async () => {
    const { rows, bill, list } = await billOf(name);
    for (const need of bill.lumber) {
      const mine = list.filter((row) => row['lumber'] === need.lumber);
      expect(need.boardFeet, need.lumber).toBeCloseTo(sum(mine.map((row) => Number(row['board feet']))), 2);
      expect(need.pieces).toBe(sum(mine.map((row) => Number(row['quantity']))));
      const printed = Number(rows.find((row) => row['item']!.endsWith(` ${need.lumber}`))!['quantity']);
      expect(printed).toBeGreaterThanOrEqual(need.boardFeetRough - 1e-6);
      expect(printed - need.boardFeetRough).toBeLessThan(0.1);
    }
    const bought = list.filter((row) => row['lumber'] !== 'offcuts').map((row) => row['lumber']);
    expect(bill.lumber.map((need: { lumber: string }) => need.lumber).sort()).toEqual([...new Set(bought)].sort());
  });

  it('is the same in JSON, schema 1', async () => {
    const { bill } = await billOf(name);
    expect(bill.schema).toBe(1);
    expect(Object.keys(bill)).toEqual(
      expect.arrayContaining(['title', 'revision', 'date', 'lumber', 'tenons', 'screws', 'glue', 'finish']),
    );
  });
});

describe('glue for the reading table, by hand, in square inches', () => {
  // Edge joints 84 x (t at 15, 10, 5, 0, 5, 10, 15); posts 3 1/4 x 2 1/4 at bearer and foot; lower rails 5 x 2 3/4;
  // stretcher 5 x 1 1/2; pads 3 x 2 1/4.
  const edges = 84 * (2 * (1.40625 + 1.6875 + 1.96875) + 2.25);
  const frames = 8 * 3.25 * 2.25 + 4 * 5 * 2.75 + 2 * 5 * 1.5 + 4 * 3 * 2.25;
  // Tenons as boxes, cheeks and edges: 63 of 1 1/2 x 3/8 x 1 7/8, 8 of 1 3/4 x 1/2 x 2 7/8, 6 of 2 3/4 x 1/2 x 2 7/8.
  const tenons = 63 * 2 * (1.5 + 0.375) * 1.875 + 8 * 2 * 2.25 * 2.875 + 6 * 2 * 3.25 * 2.875;

  it('covers joints and tenons at 7 mil on one face', async () => {
    const { bill, rows, joints } = await billOf('reading-table');
    expectPrinted(edges, '1039.5', 'edge joints');
    const faces = sum(joints.map((joint) => joint.glueArea)) / INCH ** 2;
    expectPrinted(faces, (edges + frames).toFixed(2), 'faces that meet');
    expectPrinted(bill.glue.area / INCH ** 2, (edges + frames + tenons).toFixed(2), 'with tenons');
    const milliliters = (edges + frames + tenons) * 0.007 * 16.387064;
    expectPrinted(bill.glue.milliliters, milliliters.toFixed(2), 'mL');
    const ounces = Math.ceil((milliliters / 29.5735) * 10) / 10;
    expect(rows.find((row) => row['item'] === 'wood glue')).toMatchObject({ quantity: `${ounces}`, unit: 'fl oz' });
  });

  it('takes strips as long as all tenons of a size together', async () => {
    const { rows } = await billOf('reading-table');
    const details = rows.filter((row) => row['item'] === 'loose tenons').map((row) => row['details']);
    expect(details).toEqual([
      '3/8 in x 1 1/2 in x 1 7/8 in, black cherry; 119 in of milled strip', // 63 x 1.875 = 118.1
      '1/2 in x 1 3/4 in x 2 7/8 in, black cherry; 23 in of milled strip', // 8 x 2.875 = 23
      '1/2 in x 2 3/4 in x 2 7/8 in, black cherry; 18 in of milled strip', // 6 x 2.875 = 17.25
    ]);
  });
});

describe('finish for the reading table with square edges, by hand, in square inches', () => {
  const box = (l: number, w: number, t: number): number => 2 * (l * w + l * t + w * t);
  const slope = Math.hypot(1, 0.05625);
  const top = 84 * 40 + 84 * 40 * slope + 2 * 84 * 1.125 + 2 * 40 * ((2.25 + 1.125) / 2);
  // Bearer: two faces of 30 x (2.65625 + 3.5)/2 less two corners of radius 1 and the relief, and the band around it.
  const relief = 0.5 * 0.05625; // rise of the V over half the relief
  const bearerFace = (30 * (2.65625 + 3.5)) / 2 - 2 * (1 - Math.PI / 4) - (1 / 32 + relief / 2);
  const bearerBand = 28 + Math.PI + 2 * 2.5 + 2 * 14.5 * slope + 1 + 2 * (1 / 32 + relief);
  const bearer = 2 * bearerFace + 2.25 * bearerBand;
  // Foot: 30 x 2 3/4 less a segment 20 long and 1/2 high; its arc has the radius (10² + 0.5²) / (2 · 0.5).
  const radius = (100 + 0.25) / 1;
  const half = Math.asin(10 / radius);
  const segment = radius ** 2 * half - 10 * (radius - 0.5);
  const foot = 2 * (30 * 2.75 - segment) + 2.25 * (30 + 2 * 2.75 + 10 + 2 * radius * half);
  const rest = 4 * box(21.59375, 3.25, 2.75) + 2 * box(16.75, 5, 2.75) + box(53.25, 5, 1.5) + 4 * box(3, 2.25, 0.25);
  const all = top + 2 * bearer + 2 * foot + rest;

  it('covers every face of every visible piece, the underside and joint faces too', async () => {
    const { bill, rows } = await billOf('reading-table', SQUARE);
    expectPrinted(top / 144, '48.95', 'the top');
    // Arcs are facets in the solids: a few square millimetres.
    expect(Math.abs(bill.finish.area / INCH ** 2 - all)).toBeLessThan(0.5);
    const liters = ((all * INCH ** 2) / 1e6 / 24) * 2 * 1.15;
    expect(Math.abs(bill.finish.liters - liters)).toBeLessThan(1e-4);
    const quarts = Math.ceil((bill.finish.liters / 0.946353) * 100) / 100;
    expect(rows.find((row) => row['item'] === 'finish')).toMatchObject({ quantity: `${quarts}`, unit: 'qt' });
  });

  it('follows coats, coverage and spare', async () => {
    const finish = async (changes: Changes) => (await billOf('reading-table', { ...SQUARE, ...changes })).bill.finish;
    const { area, liters } = await finish({});
    expect((await finish({ 'supplies.coats': '3' })).liters / liters).toBeCloseTo(1.5, 5);
    expect((await finish({ 'supplies.coverage': '12 m2' })).liters / liters).toBeCloseTo(2, 5);
    expect((await finish({ 'supplies.spare': '0 %' })).liters / liters).toBeCloseTo(1 / 1.15, 5);
    expect((await finish({ 'supplies.coats': '0' })).liters).toBe(0);
    expect((await finish({ 'supplies.coats': '3' })).area).toBe(area);
  });
});

describe('what is bought', () => {
  it('is in mm, mL, L and m2 in a metric design', async () => {
    const { text } = await billOf('meeting-table');
    expect(text).toMatchInlineSnapshot(`
      "item,quantity,unit,details
      white oak 16/4,12.3,bd ft,"4 pieces, by rough sizes; 10.9 by finished sizes; waste not counted"
      white oak 10/4,34.3,bd ft,"8 pieces, by rough sizes; 31.6 by finished sizes; waste not counted"
      white oak 8/4,37.3,bd ft,"6 pieces, by rough sizes; 35.1 by finished sizes; waste not counted"
      loose tenons,63,pieces,"8 mm x 40 mm x 38 mm, white oak; 2394 mm of milled strip"
      loose tenons,12,pieces,"12 mm x 60 mm x 67 mm, white oak; 804 mm of milled strip"
      wood screws,10,pieces,"no. 10 x 60 mm, flat under the head"
      washers,10,pieces,"14 mm across, one under each screw head"
      pads,4,pieces,6 mm x 70 mm x 70 mm
      wood glue,199.4,mL,"1.12 m2 of joints, one face spread"
      finish,0.7,L,"2 coats on 7.24 m2, every face and the underside; spare counted"
      "
    `);
    expect(text).not.toMatch(/ in\b|fl oz|qt|ft2/);
  });

  it('is in inches in the other', async () => {
    const { text } = await billOf('reading-table');
    expect(text).toMatchInlineSnapshot(`
      "item,quantity,unit,details
      black cherry 12/4,29.4,bd ft,"8 pieces, by rough sizes; 26.9 by finished sizes; waste not counted"
      black cherry 10/4,22.9,bd ft,"6 pieces, by rough sizes; 21.1 by finished sizes; waste not counted"
      black cherry 8/4,28.8,bd ft,"5 pieces, by rough sizes; 27.1 by finished sizes; waste not counted"
      loose tenons,63,pieces,"3/8 in x 1 1/2 in x 1 7/8 in, black cherry; 119 in of milled strip"
      loose tenons,8,pieces,"1/2 in x 1 3/4 in x 2 7/8 in, black cherry; 23 in of milled strip"
      loose tenons,6,pieces,"1/2 in x 2 3/4 in x 2 7/8 in, black cherry; 18 in of milled strip"
      wood screws,10,pieces,"no. 10 x 2 1/2 in, flat under the head"
      washers,10,pieces,"1/2 in across, one under each screw head"
      pads,4,pieces,1/4 in x 2 1/4 in x 3 in
      wood glue,7.2,fl oz,"12.9 ft2 of joints, one face spread"
      finish,0.71,qt,"2 coats on 74.5 ft2, every face and the underside; spare counted"
      "
    `);
  });

  it('names pieces that no lumber is thick enough for, and buys nothing for them', async () => {
    const { rows, bill, list } = await billOf('reading-table', { 'post.thickness': '4 in' });
    expect(bill.tooThick).toEqual(['post P1 to P4']);
    expect(list.find((row) => row['name'] === 'post')).toMatchObject({ lumber: 'glue up', 'board feet': '0' });
    expect(rows.find((row) => row['item'] === 'post P1 to P4')!['details']).toContain('glue up from two layers');
  });
});
