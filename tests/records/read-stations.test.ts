import { describe, expect, test } from 'vitest';
import { renderIssue } from '../../lib/params/render-issue.ts';
import { isDay } from '../../lib/records/day.ts';
import { readStations, type TopSize } from '../../lib/records/read-stations.ts';
import type { UnitSystem } from '../../lib/units/format-length.ts';

const TOP: TopSize = { length: 2133.6, width: 1016, thickness: 57.15, height: 749.3 };

const read = (text: string, top = TOP, units: UnitSystem = 'in') =>
  readStations({ text, from: 'desk/stations.csv' }, top, units);
const problems = (text: string, top = TOP, units: UnitSystem = 'in'): string[] =>
  (read(text, top, units).issues ?? []).map((issue) =>
    renderIssue(issue, units)
      .replace(/^error: /, '')
      .replace(/\n +given by desk\/stations\.csv/, ''),
  );

const HEAD = '# date: 2026-11-25\n';

describe('readings', () => {
  test('with a sign, in any order of columns, in inches and millimetres', () => {
    expect(read(`${HEAD}thickness,along,across\n1 3/8 in,14 in,-10 in\n35 mm,0 mm,0.5 m\n`).underside).toEqual({
      date: '2026-11-25',
      stations: [
        { row: 3, along: 355.6, across: -254, thickness: 34.925 },
        { row: 4, along: 0, across: 500, thickness: 35 },
      ],
    });
  });

  test('with a side; on the center line it may be left out', () => {
    expect(
      read(`${HEAD}along,across,side,thickness\n14 in,10 in,Left,35 mm\n14 in,0 in,,57 mm\n`).underside!.stations,
    ).toEqual([
      { row: 3, along: 355.6, across: -254, thickness: 35, side: 'left' },
      { row: 4, along: 355.6, across: 0, thickness: 57 },
    ]);
  });

  test('as heights over the floor: the show face less the height', () => {
    // Source: 29 1/2 in table, underside 27.813 in over the floor at 10 in from the center line: thickness 1.6875 in.
    const { stations } = read(`${HEAD}along,across,height\n14 in,10 in,27 13/16 in\n`).underside!;
    expect(stations[0]!.thickness).toBeCloseTo(1.6875 * 25.4, 9);
  });
});

describe('what is wrong is told at once', () => {
  test('columns', () => {
    expect(problems(`${HEAD}along,acros,along,thickness,date\n`)).toEqual([
      'there is no column "acros"\n       did you mean across?',
      'line 2, along is given more than once: columns 1 and 3',
      'there is no column "date"\n       the day stands in a line of its own above the columns: # date: 2026-11-25',
    ]);
    expect(problems(`${HEAD}across\n`)[0]).toBe(
      'the column along is missing\n       the first row names the columns: along, across, and thickness or height; there may be side',
    );
    expect(problems(`${HEAD}across\n`)[1]).toMatch(/^the column thickness is missing/);
    expect(problems(`${HEAD}along,across,thickness,note\n14,0 in,2 in,dry\n`)).toEqual([
      expect.stringMatching(/^there is no column "note"/),
      expect.stringMatching(/^line 3, along is "14", without a unit/),
    ]);
    expect(problems(`${HEAD}along,across,hight\n`)).toEqual([
      'there is no column "hight"\n       did you mean height?',
    ]);
    expect(problems(`${HEAD}along,across\n`)[0]).toMatch(/^the column thickness is missing\n +or a column height/);
    expect(problems(`${HEAD}along,across,height,thickness\n`)[0]).toMatch(
      /thickness and height say the same thing twice/,
    );
    expect(problems(`${HEAD}along;across;thickness\n`)[0]).toMatch(/columns are parted by commas/);
    const { height: _, ...hanging } = TOP;
    expect(problems(`${HEAD}along,across,height\n`, hanging)[0]).toMatch(/does not stand on a floor/);
  });

  test('the day', () => {
    const rest = 'along,across,thickness\n1 in,1 in,1 in\n';
    expect(problems(rest)[0]).toMatch(
      /^the date is missing; it must be a line of its own\n.*\n +try # date: 2026-11-25$/,
    );
    expect(problems(`# date: 2026-02-30\n${rest}`)[0]).toMatch(/^line 1, date is "2026-02-30"; it must be a day/);
    expect(problems(`# date 2026-02-03\n${rest}`)[0]).toMatch(/^line 1, date is ""; it must be a day/);
    expect(problems(`${rest}${HEAD}`)[0]).toMatch(/^line 3, date is below; it must be above the columns/);
    expect(problems(`${HEAD}${HEAD}${rest}`)[0]).toMatch(/^line 2, date is the second one; it must be there once/);
  });

  test('what is suggested is in the units of the design, a fraction in inches', () => {
    const cells = `${HEAD}along,across,thickness\n1.8,,2 1/4\n`;
    const tries = (units: UnitSystem) => problems(cells, TOP, units).map((text) => text.split('try ')[1]);
    expect(tries('in')).toEqual(['1.8 in', '10 in', '2 1/4 in']);
    expect(tries('mm')).toEqual(['1.8 mm', '250 mm', '2 1/4 in']);
  });

  test('every bad cell by line, column, value, what is allowed and what to try', () => {
    const text = `${HEAD}along,across,thickness\n14,-30 in,x\n14 in,1 in,\n90 in,1 in,1 in,2 in\n"a" b,1 in,1 in\n`;
    expect(problems(text)).toEqual([
      'line 6 cannot be read\n       there is more behind a closing quote; put a comma there',
      'line 3, along is "14", without a unit; write 14 mm or 14 in\n       try 14 in',
      'line 3, across is -30 in; it must be -20 1/32 in to 20 1/32 in\n       the top ends there',
      'line 3, thickness is "x"; it must be a length, 3/64 in to 4 1/2 in\n       write 57 mm, 2 1/4 in, 0.75 in, 7 ft or 7 ft 2 1/2 in',
      'line 4, thickness is empty; it must be filled in\n       try 1 3/8 in',
      'line 5 cannot be read\n       it has more cells than there are columns: 2 in; put a text with a comma in quotes',
      'line 5, along is 90 in; it must be -1/32 in to 84 1/32 in\n       the top ends there',
    ]);
  });

  test('a side that is none, and a sign beside a side', () => {
    expect(problems(`${HEAD}along,across,side,thickness\n14 in,-1 in,lefft,1 in\n`)).toEqual([
      'line 3, across is -1 in; it must be 0 in to 20 1/32 in\n       the column side says which way',
      'line 3, side is "lefft"; it must be left or right\n       did you mean left?',
    ]);
  });

  test('an empty table', () => {
    expect(problems(HEAD)).toEqual(['the table cannot be read\n       there is no row in it that names the columns']);
  });
});

test('days are those of the calendar', () => {
  const days = ['2024-02-29', '2000-02-29', '2026-12-31', '2026-01-01'];
  const none = [
    '2026-02-29',
    '1900-02-29',
    '2026-04-31',
    '2026-13-01',
    '2026-00-10',
    '2026-01-00',
    '26-01-01',
    '2026-1-1',
  ];
  expect(days.map(isDay)).toEqual(days.map(() => true));
  expect(none.map(isDay)).toEqual(none.map(() => false));
});
