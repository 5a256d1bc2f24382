import { describe, expect, it } from 'vitest';
import { layTable, tableOverPages } from '../../lib/drawing/lay-table.ts';
import { letterWidth } from '../../lib/drawing/letter-width.ts';
import type { Table } from '../../lib/drawing/table.ts';
import { wrapText } from '../../lib/drawing/wrap-text.ts';

const table = (rows: Table['rows'], long: 'wrap' | 'shrink' = 'wrap'): Table => ({
  columns: [
    { head: 'Part', width: 20 },
    { head: 'Name', width: 40, long, align: 'right' },
  ],
  rows,
  textHeight: 2.5,
});

const textsOf = (marks: ReturnType<typeof layTable>['marks']) =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));

describe('a table on paper', () => {
  it('has its head in bold, cells on their sides of the columns, and says how high it is', () => {
    const { marks, height, rest } = layTable(table([['B1', 'bearer'], ['P1']]), [10, 100]);
    expect(rest).toBeUndefined();
    expect(height).toBeCloseTo(3 * 5, 9);
    const texts = textsOf(marks);
    expect(texts.map(({ text, bold = false }) => [text, bold])).toEqual([
      ['Part', true],
      ['Name', true],
      ['B1', false],
      ['bearer', false],
      ['P1', false],
    ]);
    expect(texts.map(({ at, align }) => [Math.round(at[0] * 1000) / 1000, align])[3]).toEqual([68.625, 'right']);
    for (const { at } of texts) expect(at[1] > 100 - height && at[1] < 100).toBe(true);
  });

  it('breaks a long text, and shrinks one where that is enough', () => {
    const words = 'a bearer with a long name';
    const wrapped = layTable(table([['', words]]), [0, 0]);
    expect(
      textsOf(wrapped.marks)
        .slice(2)
        .map(({ text }) => text)
        .join(' '),
    ).toBe(words);
    expect(wrapped.height).toBeGreaterThan(10);
    const shrunk = layTable(table([['', words]], 'shrink'), [0, 0]);
    const [small] = textsOf(shrunk.marks).slice(2);
    expect(small!.text).toBe(words);
    expect(letterWidth(words, small!.height)).toBeCloseTo(40 - 2 * 0.55 * 2.5, 6);
    expect(small!.height).toBeGreaterThan(2.5 * 0.66);
    const hopeless = layTable(table([['', `${words} ${words}`]], 'shrink'), [0, 0]);
    expect(
      textsOf(hopeless.marks)
        .slice(2)
        .every(({ height }) => height === 2.5),
    ).toBe(true);
  });

  it('goes on over sheets under the same head, no row twice, no band without what it heads', () => {
    const rows: Table['rows'] = [
      ...Array.from({ length: 5 }, (_, k) => [`A${k}`, 'x']),
      { band: 'Frame B' },
      ...Array.from({ length: 9 }, (_, k) => [`B${k}`, 'y']),
    ];
    // 36 mm hold the head and six rows.
    const parts = tableOverPages(table(rows), () => ({ at: [0, 200], room: 36 }));
    const texts = parts.map(({ marks }) =>
      textsOf(marks)
        .map(({ text }) => text)
        .filter((text) => /^[AB]\d|Frame|Part/.test(text)),
    );
    expect(texts.map((one) => one[0])).toEqual(['Part', 'Part', 'Part']);
    expect(texts[0]).toEqual(['Part', 'A0', 'A1', 'A2', 'A3', 'A4']);
    expect(texts[1]![1]).toBe('Frame B');
    expect(texts.flat().filter((text) => text !== 'Part')).toHaveLength(15);
    expect(parts.every(({ height }) => height <= 36)).toBe(true);
  });

  it('is refused with a row higher than a sheet', () => {
    const tall = table([['', 'word '.repeat(60).trim()]]);
    expect(() => tableOverPages(tall, () => ({ at: [0, 100], room: 40 }))).toThrow('higher than the 40 mm');
  });
});

describe('wrapped text', () => {
  it('never is wider than asked, and loses nothing', () => {
    const text = 'rout along the template from this face to past the middle thisoneisverylongandhasnospaceatall end';
    for (const width of [10, 25, 60, 400]) {
      const lines = wrapText(text, width, 2.5);
      expect(Math.max(...lines.map((line) => letterWidth(line, 2.5)))).toBeLessThanOrEqual(width);
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
    }
  });
});
