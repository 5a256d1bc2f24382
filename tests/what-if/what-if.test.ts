import { describe, expect, it } from 'vitest';
import table from '../../designs/reading-table/design.ts';
import { makeJob } from '../../lib/build/job.ts';
import { whatIfData } from '../../lib/build/what-if-data.ts';
import { whatIfTable } from '../../lib/build/what-if-table.ts';
import { columnsOf } from '../../lib/derive/what-if/columns.ts';
import { worst } from '../../lib/model/finding.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { setPath } from '../../lib/params/values.ts';
import { plank } from './plank.ts';
import { tried } from './tried.ts';

describe('one board, by hand', () => {
  it('weighs 0.112 kg for each mm, and is cut from the class that it needs', async () => {
    const { trials } = await tried(plank, 'thickness=20 mm..30 mm:3');
    // Cherry: specific gravity 0.50, so 1000 x 0.50 x 1.12 = 560 kg/m³ at 12 %; 1000 x 200 mm of it.
    expect(trials.map((trial) => Number(trial.refused === undefined && trial.mass.toFixed(9)))).toEqual([
      2.24, 2.8, 3.36,
    ]);
    // 4/4 dresses to 20.6 mm, 5/4 to 27.0, 6/4 to 33.3; milled from 204.7625 x 1050.8 mm; 2359737.216 mm³ to the board foot.
    const feet = [25.4, 31.75, 38.1].map((nominal) => (nominal * 204.7625 * 1050.8) / 2359737.216);
    expect(trials.map((trial) => trial.refused === undefined && trial.boardFeet)).toEqual(
      feet.map((value) => expect.closeTo(value, 9)),
    );
  });

  it('is not there where a rule is broken, and the row says which', async () => {
    const result = await tried(plank, 'thickness=30 mm..50 mm:3');
    expect(result.trials.map(({ refused }) => refused)).toEqual([
      undefined,
      undefined,
      'thickness must be at most 40 mm: a board is five times as wide as thick',
    ]);
    const [row] = whatIfTable(result, 'mm').rows.slice(-1);
    expect(row).toMatchObject({ lead: ['', '50 mm', 'not allowed'], cells: [] });
  });

  it('says so when another parameter would have to give way', async () => {
    const { trials } = await tried(plank, 'width=80 mm,120 mm');
    expect(trials.map(({ refused }) => refused)).toEqual([
      'thickness must be at most 16 mm: a board is five times as wide as thick',
      undefined,
    ]);
  });

  it('is not there where it cannot be put together', async () => {
    const { trials } = await tried(plank, 'broken=no,yes');
    expect(trials.map(({ refused }) => refused)).toEqual([undefined, 'it is broken']);
  });

  it('makes a grid of two parameters, the second running fastest, and knows where the design stands', async () => {
    const result = await tried(plank, 'boards=1..3', 'thickness=10 mm,20 mm');
    expect(result.trials.map(({ at }) => at.join())).toEqual(['0,0', '0,1', '1,0', '1,1', '2,0', '2,1']);
    const { rows } = whatIfTable(result, 'mm');
    expect(rows.map(({ lead }) => lead.slice(0, 3).join('|'))).toEqual([
      '|1|10 mm',
      '*|1|20 mm',
      '|2|10 mm',
      '|2|20 mm',
      '|3|10 mm',
      '|3|20 mm',
    ]);
  });
});

describe('the edge of the reading-room table', () => {
  const THICKNESSES = [25.4, 28.575, 31.75, 34.925, 38.1];
  const result = tried(table, 'top.edgeThickness=1 in..1 1/2 in:5');

  it('shows the wood under the slots as worked out by hand', async () => {
    const columns = columnsOf((await result).trials);
    const cover = columns.find(({ check, limit }) => check === 'slot cover' && limit === 6.35)!;
    // The slot of strip T1 ends 1 in beyond the joint at 15 in: t = 2 1/4 in less 16/20 of the taper there. Its floor
    // lies 5/8 + 3/16 in below the show face, and cleaning up takes 1/32 in.
    const byHand = THICKNESSES.map((edge) => 57.15 - (57.15 - edge) * 0.8 - (15.875 + 4.7625) - 0.79375);
    expect(cover.cells.map((cell) => cell?.value)).toEqual(byHand.map((value) => expect.closeTo(value, 9)));
    expect(cover).toMatchObject({ unit: 'mm', direction: 'at least' });
    const edge = columns.find(({ check }) => check === 'edge thickness')!;
    expect(edge.cells.map((cell) => cell?.value)).toEqual(THICKNESSES.map((value) => expect.closeTo(value, 9)));
  });

  it('says of each value what a check of that design says', async () => {
    const { trials } = await result;
    const values = readValues(table.params, table.values).values!;
    const job = makeJob(table, setPath(table.params, values, 'top.edgeThickness', 31.75));
    const trial = trials[2]!;
    if (trial.refused !== undefined) throw new RangeError(trial.refused);
    const plain = (findings: typeof job.findings) => findings.map(({ fixes: _, ...rest }) => rest);
    expect(plain(trial.findings)).toEqual(plain(job.findings));
  });

  it('prints numbers with their unit and a letter, and leaves out what does not change', async () => {
    const { lead, columns, rows, unchanged, brief } = whatIfTable(await result, 'in');
    expect(lead.map(({ head }) => head)).toEqual(['', 'top.\nedgeThickness', 'verdict']);
    const heads = columns.map(({ head }) => head.replace(/ *\n */g, ' ').trim());
    const cell = (head: string, row: number): string => rows[row]!.cells[heads.indexOf(head)]!.trimEnd();
    expect([0, 1, 2, 3, 4].map((row) => cell('slot cover from 1/4 in', row))).toEqual([
      '13/32 in',
      '1/2 in',
      '39/64 in',
      '45/64 in',
      '13/16 in',
    ]);
    expect(cell('give up to 0.236 in', 0)).toMatch(/^0\.2[4-7]\d? in L$/);
    expect(cell('give up to 0.236 in', 4)).toMatch(/^0\.1[2-5]\d? in$/);
    expect(heads).toContain('mass lb');
    expect(heads).toContain('board feet rough');
    expect(unchanged).toContain('pieces fit together');
    expect(unchanged).toContain('slot cover (from 3/8 in)');
    expect(heads.indexOf('give up to 0.236 in')).toBeLessThan(heads.indexOf('mass lb'));
    expect(brief[heads.indexOf('slot cover from 1/4 in')]).toBe('slot cover (from 1/4 in) 13/32 to 13/16 in');
    expect(rows[1]!.lead).toEqual(['*', '1 1/8 in', 'look again']);
  });

  it('has every column when all are asked for', async () => {
    const { columns, unchanged } = whatIfTable(await result, 'in', true);
    expect(columns.length).toBe(columnsOf((await result).trials).length + 2);
    expect(unchanged).toEqual([]);
  });

  it('is the same as data', async () => {
    const { vary, columns, rows } = whatIfData(await result);
    expect(vary).toMatchObject([{ path: 'top.edgeThickness', now: '1 1/8 in' }]);
    const cover = columns.findIndex(({ check, limit }) => check === 'slot cover' && limit === 6.35);
    const [first, second] = rows;
    expect(first).toMatchObject({ allowed: true, now: false });
    expect(first!.values).toEqual({ 'top.edgeThickness': { text: '1 in', number: 25.4 } });
    expect(second).toMatchObject({ now: true });
    if (!first!.allowed) throw new RangeError('not allowed');
    expect(first!.cells[cover]).toMatchObject({ verdict: 'ok', part: 'top/strip-1', limit: 6.35 });
    expect(first!.verdict).toBe(
      worst(
        (await result).trials.flatMap((trial) =>
          trial.at[0] === 0 && trial.refused === undefined ? trial.findings : [],
        ),
      ),
    );
  });
});
