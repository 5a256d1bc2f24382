import { describe, expect, it } from 'vitest';
import { cutListTable } from '../../lib/build/cut-list-table.ts';
import { expectPrinted } from '../printed.ts';
import { csvRows, readCsv } from '../readers/csv.ts';
import { type Changes, DESIGN_NAMES, type DesignName, jobOf, written } from '../written.ts';
import { inchesInText, marksInText } from './marks-in-text.ts';

interface PieceInFile {
  readonly id: string;
  readonly mark: string;
  readonly members?: readonly string[];
  readonly finished: Readonly<Record<string, number>>;
}

const DIMENSIONS = ['thickness', 'width', 'length'] as const;

async function listOf(name: DesignName, changes: Changes = {}) {
  const build = await written(name, changes, ['lists', 'model']);
  const model = build.json('model.json');
  return { build, rows: csvRows(build.text('cut-list.csv')), pieces: pieces(model), derived: model.derived };
}

/** Every piece of wood: all parts but those that are glued up from others. */
const pieces = (model: { assembly: { parts: PieceInFile[] } }): PieceInFile[] =>
  model.assembly.parts.filter((part) => part.members === undefined);

describe.each(DESIGN_NAMES)('the cut list of the %s, by the grammar of RFC 4180', (name) => {
  it('has every piece of wood once, and the quantities add up', async () => {
    const { rows, pieces: all, derived } = await listOf(name);
    const marks = rows.flatMap((row) => marksInText(row['part']!));
    expect(marks.sort()).toEqual(all.map((piece) => piece.mark).sort());
    for (const row of rows) expect(Number(row['quantity'])).toBe(marksInText(row['part']!).length);
    expect(rows.reduce((sum, row) => sum + Number(row['quantity']), 0)).toBe(derived.pieces);
  });

  it('groups pieces of one size and name, and no two rows are alike', async () => {
    const { rows, pieces: all } = await listOf(name);
    const byMark = new Map(all.map((piece) => [piece.mark, piece]));
    for (const row of rows) {
      for (const mark of marksInText(row['part']!)) {
        for (const size of DIMENSIONS) {
          expect(Number(row[`finished ${size} (mm)`]), mark).toBeCloseTo(byMark.get(mark)!.finished[size]!, 3);
        }
      }
    }
    const likeness = rows.map(({ part, quantity, 'board feet': _, 'board feet rough': __, ...rest }) =>
      JSON.stringify(rest),
    );
    expect(new Set(likeness).size).toBe(rows.length);
  });

  it('asks for no less wood than is left: rough sizes hold finished ones, in mm and in rounded inches', async () => {
    const { rows } = await listOf(name);
    for (const row of rows) {
      for (const size of DIMENSIONS) {
        const [finished, rough] = ['finished', 'rough'].map((kind) => Number(row[`${kind} ${size} (mm)`])) as [
          number,
          number,
        ];
        expect(rough, `${row['part']} ${size}`).toBeGreaterThanOrEqual(finished);
        expect(Math.abs(inchesInText(row[`finished ${size} (in)`]!) * 25.4 - finished)).toBeLessThan(25.4 / 127);
        const up = inchesInText(row[`rough ${size} (in)`]!) * 25.4 - rough;
        expect(up, `${row['part']} rough ${size}`).toBeGreaterThan(-0.001);
        expect(up).toBeLessThan(25.4 / 16);
      }
    }
  });

  it('says the same in cut-list.json, schema 1', async () => {
    const { build, rows } = await listOf(name);
    const list = build.json('cut-list.json');
    expect(list.schema).toBe(1);
    expect(list.rows.map((row: { marks: string[] }) => row.marks)).toEqual(
      rows.map((row) => marksInText(row['part']!)),
    );
    for (const [k, row] of rows.entries()) {
      expect(list.rows[k].boardFeet).toBeCloseTo(Number(row['board feet']), 3);
      expect(list.rows[k].boardFeetRough).toBeCloseTo(Number(row['board feet rough']), 3);
    }
    const sum = rows.reduce((total, row) => total + Number(row['board feet']), 0);
    expect(list.boardFeet).toBeCloseTo(sum, 1);
    expect(list.pieces).toBe(rows.reduce((total, row) => total + Number(row['quantity']), 0));
  });
});

describe('the cut list of the reading table', () => {
  it('goes in building order: top, its tenons, posts, bearers, feet, rails, stretcher, tenons of the base, pads', async () => {
    const { rows } = await listOf('reading-table');
    expect(rows.map((row) => `${row['quantity']} ${row['name']} ${row['part']}`)).toEqual([
      '2 strip T1, T8',
      '2 strip T2, T7',
      '2 strip T3, T6',
      '2 strip T4, T5',
      '63 loose tenon E1 to E63',
      '4 post P1 to P4',
      '2 bearer B1, B2',
      '2 foot F1, F2',
      '2 lower rail R1, R2',
      '1 stretcher S1',
      '8 loose tenon N1 to N4, N7 to N10',
      '6 loose tenon N5, N6, N11 to N14',
      '4 pad D1 to D4',
    ]);
  });

  it('counts board feet as lumber is sold: nominal thickness x width x length / 144, in inches, by hand', async () => {
    const { rows } = await listOf('reading-table');
    const feet = (part: string): [number, number] => {
      const row = rows.find((r) => r['part'] === part)!;
      return [Number(row['board feet']), Number(row['board feet rough'])];
    };
    const [strip, roughStrip] = feet('T1, T8');
    expectPrinted(strip, '11.667', '2 x (2 x 5 x 84) / 144');
    expectPrinted(roughStrip, '12.392', '2 x (2 x 5.1875 x 86) / 144');
    const [post, roughPost] = feet('P1 to P4');
    expectPrinted(post, '5.848', '4 x (3 x 3.25 x 21.59375) / 144');
    expectPrinted(roughPost, '6.759', '4 x (3 x 3.4375 x 23.59375) / 144');
    expect(feet('E1 to E63')).toEqual([0, 0]);
  });

  it('takes 8/4 for a blank of exactly 1 3/4 in, and 10/4 for one a hair thicker', async () => {
    const lumber = async (changes: Changes): Promise<readonly (string | undefined)[]> => {
      const row = (await listOf('reading-table', changes)).rows.find((r) => r['part'] === 'T2, T7')!;
      return [row['rough thickness (in)'], row['lumber']];
    };
    expect(await lumber({})).toEqual(['1 3/4', '8/4']);
    expect(await lumber({ 'allowance.cleanUp': '1.6 mm' })).toEqual(['1 13/16', '10/4']);
    expect(await lumber({ 'allowance.cleanUp': '1/32 in' })).toEqual(['1 3/4', '8/4']);
  });

  it('moves with every allowance, and with nothing but it', async () => {
    const sizesOf = async (part: string, changes: Changes): Promise<number[]> => {
      const row = (await listOf('reading-table', changes)).rows.find((r) => r['part'] === part)!;
      return ['finished', 'rough'].flatMap((kind) => DIMENSIONS.map((size) => Number(row[`${kind} ${size} (mm)`])));
    };
    const moved = async (part: string, changes: Changes): Promise<number[]> => {
      const [before, after] = [await sizesOf(part, {}), await sizesOf(part, changes)];
      return after.map((mm, k) => Math.round((mm - before[k]!) * 100) / 100);
    };
    const one = '1/2 in';
    expect(await moved('B1, B2', { 'allowance.length': one })).toEqual([0, 0, 0, 0, 0, -38.1]); // was 2 in
    expect(await moved('B1, B2', { 'allowance.width': one })).toEqual([0, 0, 0, 0, 7.94, 0]); // was 3/16 in
    expect(await moved('B1, B2', { 'allowance.thickness': one })).toEqual([0, 0, 0, 12.7, 0, 0]);
    expect(await moved('B1, B2', { 'allowance.cleanUp': one })).toEqual([0, 0, 0, 0, 0, 0]);
    expect(await moved('T1, T8', { 'allowance.cleanUp': one })).toEqual([0, 0, 0, 11.11, 0, 0]); // was 1/16 in
    expect(await moved('T1, T8', { 'allowance.thickness': one })).toEqual([0, 0, 0, 0, 0, 0]);
  });

  it('quotes cells with a comma and keeps the columns of the head', async () => {
    const { build } = await listOf('reading-table');
    const text = build.text('cut-list.csv');
    expect(text).toContain('"T1, T8",strip,2,1 13/32,5,84,1 1/2,5 3/16,86,black cherry,8/4,');
    expect(readCsv(text)[0]).toEqual([
      'part',
      'name',
      'quantity',
      'finished thickness (in)',
      'finished width (in)',
      'finished length (in)',
      'rough thickness (in)',
      'rough width (in)',
      'rough length (in)',
      'material',
      'lumber',
      'board feet',
      'board feet rough',
      'notes',
      'finished thickness (mm)',
      'finished width (mm)',
      'finished length (mm)',
      'rough thickness (mm)',
      'rough width (mm)',
      'rough length (mm)',
    ]);
  });
});

describe('the cut list for reading', () => {
  const row = (name: DesignName, units: 'in' | 'mm', part: string): string | undefined =>
    cutListTable(jobOf(name).cutList, units)
      .rows.find((cells) => cells[0] === part)
      ?.join(' | ');

  it('speaks mm in a metric design and inches in the other', () => {
    expect(row('meeting-table', 'mm', 'U1, U2')).toMatchInlineSnapshot(
      `"U1, U2 | upper rail | 2 | 45 | 110 | 530 | 45 | 115 | 580 | white oak | 10/4 | upper edge scribed to the underside"`,
    );
    expect(row('reading-table', 'in', 'P1 to P4')).toMatchInlineSnapshot(
      `"P1 to P4 | post | 4 | 2 3/4 | 3 1/4 | 21 19/32 | 2 3/4 | 3 7/16 | 23 5/8 | black cherry | 12/4 | "`,
    );
    expect(row('reading-table', 'mm', 'P1 to P4')).toMatchInlineSnapshot(
      `"P1 to P4 | post | 4 | 69.8 | 82.5 | 548.5 | 70 | 88 | 600 | black cherry | 12/4 | "`,
    );
    expect(cutListTable(jobOf('meeting-table').cutList, 'mm').columns[3]!.head).toBe('T (mm)');
    expect(cutListTable(jobOf('meeting-table').cutList, 'in').columns[3]!.head).toBe('T (in)');
  });
});

describe('the reader of RFC 4180', () => {
  it('reads quoted commas, quotes and line ends, and refuses what the grammar refuses', () => {
    expect(readCsv('a,"b,c"\r\n"say ""d""","e\r\nf"\r\n')).toEqual([
      ['a', 'b,c'],
      ['say "d"', 'e\r\nf'],
    ]);
    expect(() => readCsv('a,b\n')).toThrow('CRLF');
    expect(() => readCsv('a,"b\r\n')).toThrow('not closed');
    expect(() => readCsv('a,b\r\nc\r\n')).toThrow('1 cells, not 2');
    expect(() => readCsv('a,b"c\r\n')).toThrow('CRLF');
    expect(() => csvRows('a,a\r\n')).toThrow('twice');
  });
});
