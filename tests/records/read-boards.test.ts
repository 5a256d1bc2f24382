import { describe, expect, test } from 'vitest';
import { renderIssue } from '../../lib/params/render-issue.ts';
import { readBoards } from '../../lib/records/read-boards.ts';
import type { UnitSystem } from '../../lib/units/format-length.ts';

const read = (text: string, units: UnitSystem = 'in') => readBoards({ text, from: 'boards.csv' }, units);
const problems = (text: string, units: UnitSystem = 'in'): string[] =>
  (read(text, units).issues ?? []).map((issue) =>
    renderIssue(issue, units)
      .replace(/^error: /, '')
      .replace(/\n +given by boards\.csv/, ''),
  );

const HEAD = 'mark,thickness,width,length,moisture,bark,tone,defects,price\n';

describe('boards', () => {
  test('with everything, in inches and millimetres', () => {
    const defects = 'knot 10 in..14 in x 1 in..2.5 in face A 1/4 in deep; end check 0 in..30 mm through';
    expect(read(`${HEAD}7,50 mm,6 in,90 in,7.5 %,b,Dark,${defects},64.50\n`).boards).toEqual([
      {
        row: 2,
        mark: '7',
        thickness: 50,
        width: 152.4,
        length: 2286,
        moisture: 7.5,
        bark: 'B',
        tone: 1,
        price: 64.5,
        defects: [
          { what: 'knot', from: 254, to: 355.6, near: 25.4, far: 63.5, face: 'A', depth: 6.35 },
          { what: 'end check', from: 0, to: 30, near: 0, far: 152.4, face: 'through', depth: 50 },
        ],
      },
    ]);
  });

  test('by four corners: the least counts', () => {
    const [board] = read('mark,t1,t2,t3,t4,width,length\nA1,2 in,1 3/4 in,50 mm,51 mm,5 in,90 in').boards!;
    expect([board!.thickness, board!.corners, board!.defects]).toEqual([44.45, [50.8, 44.45, 50, 51], []]);
  });
});

describe('what is wrong with boards is told at once', () => {
  test('columns', () => {
    expect(problems('mark,widht,length,t1,t2\n')).toEqual([
      'there is no column "widht"\n       did you mean width?',
      'the column t3 is missing\n       thickness is measured at one place or at all four corners',
      'the column t4 is missing\n       thickness is measured at one place or at all four corners',
    ]);
    expect(problems('mark,width,length\n')).toEqual([
      'the column thickness is missing\n       or the four columns t1, t2, t3 and t4 for the corners',
    ]);
    expect(problems('mark,thickness,length\n')).toEqual([
      'the column width is missing\n       the first row names the columns: mark, width, length, and thickness or the four corners t1, t2, t3, t4; there may be moisture, bark, tone, defects, price',
    ]);
    expect(problems('mark;thickness;width;length\n1;2 in;5 in;90 in\n')).toEqual([
      'there is no column "mark;thickness;width;length"\n       columns are parted by commas',
    ]);
    expect(problems('mark,thickness,width,length,note\n1,2,5 in,90 in,dry\n')).toEqual([
      expect.stringMatching(/^there is no column "note"/),
      expect.stringMatching(/^line 2, thickness is "2", without a unit/),
    ]);
    expect(problems('mark,thicknes,length,width\n')).toEqual([
      'there is no column "thicknes"\n       did you mean thickness?',
    ]);
    expect(problems('mark,width,length,thickness,t1\n')[0]).toMatch(/say the same thing twice/);
  });

  test('cells', () => {
    const text = `${HEAD}1,2,5 in,90 in,8,C,pale,,-3\n1,2 in,5 in,90 ft,70 %,A,2,,\n*,2 in,,90 in,,,,,\n`;
    expect(problems(text)).toEqual([
      'line 2, thickness is "2", without a unit; write 2 mm or 2 in\n       try 2 in',
      'line 2, moisture is "8", without a unit; write 8 %\n       try 8 %',
      'line 2, bark is "C"; it must be A or B',
      'line 2, tone is "pale"; it must be light, medium, dark, or a number from 0 to 1',
      'line 2, price is -3; it must be 0 to 100000',
      'line 3, mark is given more than once: on line 2 and here',
      'line 3, length is 90 ft; it must be 3 15/16 in to 275 37/64 in\n       no board is shorter or longer than that',
      'line 3, moisture is 70 %; it must be 0 % to 60 %',
      'line 3, tone is "2"; it must be light, medium, dark, or a number from 0 to 1',
      'line 4, mark is "*"; it must be what is pencilled on the wood: up to 12 letters and figures',
      'line 4, width is empty; it must be filled in\n       try 5 1/2 in',
    ]);
  });

  test('what is suggested is in the units of the design, a fraction in inches', () => {
    const cells = 'mark,thickness,width,length\n1,1.8,,2240\n2,2 1/4,5 in,90 in\n';
    const tries = (units: UnitSystem) => problems(cells, units).map((text) => text.split('try ')[1]);
    expect(tries('in')).toEqual(['1.8 in', '5 1/2 in', '2240 in', '2 1/4 in']);
    expect(tries('mm')).toEqual(['1.8 mm', '140 mm', '2240 mm', '2 1/4 in']);
  });

  test('defects, with how they are written', () => {
    const defect = (text: string): string => problems(`${HEAD}1,2 in,5 in,90 in,,,,${text},\n`)[0]!;
    expect(defect('knot in the middle')).toMatch(
      /^line 2, defects is "knot in the middle"; it must be a defect\n +what it is, from\.\.to along the board/,
    );
    expect(defect('knot 10 in..14 in face A')).toMatch(/it must be a defect/);
    expect(defect('knot 14 in..10 in through')).toMatch(/the first number of from\.\.to must be the smaller one/);
    expect(defect('knot 10 in..91 in through')).toMatch(/is 91 in; it must be 0 in to 90 in\n +of the defect "knot/);
    expect(defect('knot 10..14 in through')).toMatch(/is "10", without a unit/);
    expect(defect('knot 1 in..2 in x 1 in..6 in face B 3 in deep')).toMatch(/is 6 in; it must be 0 in to 5 in/);
  });
});
