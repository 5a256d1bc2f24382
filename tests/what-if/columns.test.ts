import { describe, expect, it } from 'vitest';
import { changingColumns, limitText, rangeText } from '../../lib/derive/what-if/column-look.ts';
import { columnsOf } from '../../lib/derive/what-if/columns.ts';
import type { Trial } from '../../lib/derive/what-if/what-if.ts';
import type { Finding, Verdict } from '../../lib/model/finding.ts';

const finding = (check: string, verdict: Verdict, value?: number, limit?: number, unit = 'mm'): Finding => ({
  check,
  verdict,
  part: 'top',
  ...(value === undefined ? {} : { value }),
  ...(limit === undefined ? {} : { limit }),
  unit,
  because: `${check} ${value}`,
  fixes: [],
  source: 'our convention',
});

const trial = (at: number, ...findings: readonly Finding[]): Trial => ({ at: [at], findings, mass: 1, boardFeet: 1 });

describe('columns', () => {
  it('take the worst finding: by verdict, then by how far it is beyond its limit, on the side that is bad', () => {
    const [give, cover] = columnsOf([
      trial(
        0,
        finding('give', 'ok', 5, 6),
        finding('give', 'look again', 7, 6),
        finding('give', 'look again', 8, 6),
        finding('cover', 'ok', 20, 6),
        finding('cover', 'ok', 9, 6),
      ),
    ]);
    expect(give).toMatchObject({ direction: 'at most', limit: 6, cells: [{ value: 8 }] });
    expect(cover).toMatchObject({ direction: 'at least', limit: 6, cells: [{ value: 9 }] });
  });

  it('put a verdict before any number', () => {
    const [column] = columnsOf([trial(0, finding('give', 'look again', 8, 6), finding('give', 'change it', 6.5, 6))]);
    expect(column?.cells).toMatchObject([{ verdict: 'change it' }]);
  });

  it('part a check with the same few limits throughout, and keep together one whose limits move', () => {
    const parted = columnsOf([
      trial(0, finding('cover', 'ok', 7, 6), finding('cover', 'ok', 12, 10)),
      trial(1, finding('cover', 'ok', 8, 6), finding('cover', 'ok', 12, 10)),
    ]);
    expect(parted.map(({ limit, cells }) => [limit, cells.map((cell) => cell?.value)])).toEqual([
      [6, [7, 8]],
      [10, [12, 12]],
    ]);
    const together = columnsOf([trial(0, finding('sag', 'ok', 1, 6)), trial(1, finding('sag', 'ok', 1, 7))]);
    expect(together).toHaveLength(1);
    expect(together[0]?.limit).toBeUndefined();
  });

  it('leave a gap where a piece is refused, or a check has nothing to say', () => {
    const [give, cover] = columnsOf([
      trial(0, finding('give', 'ok', 5, 6)),
      { at: [1], refused: 'too thin' },
      trial(2, finding('give', 'ok', 4, 6), finding('cover', 'not checked')),
    ]);
    expect(give?.cells.map((cell) => cell?.value)).toEqual([5, undefined, 4]);
    expect(cover?.cells.map((cell) => cell?.verdict)).toEqual([undefined, undefined, 'not checked']);
  });
});

describe('what is shown of them', () => {
  const columns = columnsOf([
    trial(
      0,
      finding('same', 'ok', 5, 6),
      finding('far', 'ok', 1, 6),
      finding('near', 'ok', 5, 6),
      finding('bad', 'ok', 5, 6),
    ),
    trial(
      1,
      finding('same', 'ok', 5, 6),
      finding('far', 'ok', 2, 6),
      finding('near', 'ok', 4, 6),
      finding('bad', 'change it', 9, 6),
    ),
  ]);

  it('is what changes: first what is not ok, then what is nearest to its limit', () => {
    expect(changingColumns(columns, 'mm').map(({ check }) => check)).toEqual(['bad', 'near', 'far']);
  });

  it('is no change that cannot be seen in print', () => {
    const close = columnsOf([trial(0, finding('a', 'ok', 5, 6)), trial(1, finding('a', 'ok', 5.001, 6))]);
    expect(changingColumns(close, 'mm')).toEqual([]);
  });

  it('is told in fractions of an inch when the limit is a whole number of 64ths, otherwise in thousandths', () => {
    const [inches] = columnsOf([trial(0, finding('a', 'ok', 9.525, 6.35)), trial(1, finding('a', 'ok', 12.7, 6.35))]);
    expect([limitText(inches!, 'in'), rangeText(inches!, [inches!], 'in')]).toEqual(['from 1/4 in', 'a 3/8 to 1/2 in']);
    const [mm] = columnsOf([trial(0, finding('b', 'ok', 2.04, 6)), trial(1, finding('b', 'ok', 0.26, 6))]);
    expect([limitText(mm!, 'in'), rangeText(mm!, [mm!], 'in')]).toEqual(['up to 0.236 in', 'b 0.01 to 0.08 in']);
    expect([limitText(mm!, 'mm'), rangeText(mm!, [mm!], 'mm')]).toEqual(['up to 6 mm', 'b 0.26 to 2 mm']);
    const [share] = columnsOf([trial(0, finding('c', 'look again', 0.912, 0.8, 'of the working stress'))]);
    expect([limitText(share!, 'in'), rangeText(share!, [share!], 'in')]).toEqual(['up to 80 %', 'c 91.2 to 91.2 %']);
  });
});
