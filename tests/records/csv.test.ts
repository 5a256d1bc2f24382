import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readCsv } from '../../lib/records/csv.ts';

test('byte order mark, CRLF, blank lines, remarks, filled-up rows, inch marks and line numbers', () => {
  const text =
    '\uFEFF# date: 2026-11-25,,\r\n\r\n along , "the ""far"" end"\r\n,,\r\n1 3/8",5\r\n"two\r\nlines",x\r\ny,z';
  expect(readCsv(text)).toEqual({
    header: { line: 3, cells: ['along', 'the "far" end'] },
    rows: [
      { line: 5, cells: ['1 3/8"', '5'] },
      { line: 6, cells: ['two\r\nlines', 'x'] },
      { line: 8, cells: ['y', 'z'] },
    ],
    remarks: [{ line: 1, cells: ['date: 2026-11-25'] }],
    faults: [],
  });
});

test('quotes that are not closed, or closed too early, are told with their line, and their rows left out', () => {
  const { rows, faults } = readCsv('a,b\n"x" y,1\n2,3\n"4,5\n6,7');
  expect(rows).toEqual([{ line: 3, cells: ['2', '3'] }]);
  expect(faults).toEqual([
    { line: 2, because: 'there is more behind a closing quote; put a comma there' },
    { line: 4, because: 'a quote is opened and never closed' },
  ]);
});

test('an empty text has no rows', () => {
  for (const text of ['', '\n\n', '\uFEFF', '# only a remark', ',,,']) {
    expect([readCsv(text).header, readCsv(text).rows]).toEqual([undefined, []]);
  }
});

// Source: RFC 4180, rule 5 to 7: what is written by its rules is read as it was.
test('any cells that are quoted by the rules come back', () => {
  const cell = fc.stringMatching(/^[a-z0-9" ,\n]{1,8}$/).filter((s) => s.trim() === s && s !== '' && s[0] !== '#');
  const table = fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), { minLength: 2, maxLength: 5 });
  const quoted = (s: string): string => (/[",\n]/.test(s) ? `"${s.replaceAll('"', '""')}"` : s);
  fc.assert(
    fc.property(table, fc.constantFrom('\n', '\r\n'), (rows, end) => {
      const text = rows.map((cells) => cells.map(quoted).join(',')).join(end);
      const read = readCsv(text);
      expect([read.header!, ...read.rows].map(({ cells }) => cells)).toEqual(rows);
      expect(read.faults).toEqual([]);
    }),
    { seed: 7, numRuns: 300 },
  );
});

test('any text at all is read to its end', () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', '\r', ' ', '#') }), (text) => {
      const { rows, faults, header } = readCsv(text);
      for (const { line } of [...rows, ...faults, ...(header ? [header] : [])]) {
        expect(line).toBeGreaterThan(0);
        expect(line).toBeLessThanOrEqual(text.split(/\r\n|\n|\r/).length);
      }
    }),
    { seed: 8, numRuns: 2000 },
  );
});
