import { describe, expect, test } from 'vitest';
import { boardsOfPieces } from '../../lib/build/boards-of-pieces.ts';
import { lumberPlan, paperPlan } from '../../lib/build/lumber-plan.ts';
import { lumberReport } from '../../lib/build/lumber-report.ts';
import { listFiles } from '../../lib/build/output-lists.ts';
import { lumberFiles } from '../../lib/build/output-lumber.ts';
import { modelFile } from '../../lib/build/output-model.ts';
import { measuredBoards } from '../../lib/derive/checks/measured-boards.ts';
import { parseLength } from '../../lib/units/parse-length.ts';
import { readCsv } from '../readers/csv.ts';
import { metricWithBoards } from './metric-boards.ts';
import { readingWithBoards } from './reading-boards.ts';

const INCH = 25.4;
const job = readingWithBoards();
const boards = job.records.boards!;
const text = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** What a strip from `from` to `to` must have, mm: the wedge at its inner edge and 1/16 in clean-up. */
const needed = (from: number, to: number): number => 2.3125 * INCH - 0.05625 * Math.max(0, from, -to);

describe('the demo pile', () => {
  test('boards in the order of the file do not make the top', () => {
    let across = -20 * INCH;
    const naive = boards
      .filter((b) => b.length >= 86 * INCH)
      .slice(0, 8)
      .map((b) => {
        const from = across;
        across += b.width;
        return b.thickness - needed(from, across);
      });
    expect(Math.min(...naive)).toBeLessThan(-5);
  });

  test('the plan does: every stack thick enough, every board once, widths add up, wet boards left out', async () => {
    const { strips } = await lumberPlan(job, { strips: 70_000, cuts: 4 });
    const { plan } = strips!.status;
    const marks = plan!.strips.map(({ show }) => show.mark);
    expect(new Set(marks).size).toBe(8);
    expect(marks).not.toContain('15');
    for (const { from, to, show } of plan!.strips) {
      const board = boards.find(({ mark }) => mark === show.mark)!;
      expect(board.thickness - needed(from, to)).toBeGreaterThan(-1e-9);
      expect(to - from).toBeLessThanOrEqual(board.width + 1e-9);
      expect(to - from).toBeGreaterThanOrEqual(3.5 * INCH - 1e-9);
      expect(board.length).toBeGreaterThanOrEqual(86 * INCH - 1e-6);
    }
    expect(plan!.strips.at(-1)!.to - plan!.strips[0]!.from).toBeGreaterThanOrEqual(40.25 * INCH - 1e-6);
  });

  test('the same input gives the same plan, and a stop gives the best so far and says so', async () => {
    const work = { strips: 70_000, cuts: 8 };
    const [one, other] = [await lumberPlan(job, work), await lumberPlan(readingWithBoards(), work)];
    expect(JSON.stringify(other)).toBe(JSON.stringify(one));
    let asked = 0;
    const onProgress = (): boolean => ++asked >= 3;
    const stopped = await lumberPlan(job, { strips: 10_000_000, cuts: 8, onProgress });
    expect(stopped.stopped).toBe(true);
    expect(
      lumberReport(job, stopped, 'in')
        .flatMap(({ lines }) => lines)
        .join(),
    ).toContain('it was stopped');
  });
});

describe('the papers', async () => {
  const files = await lumberFiles(job);

  test('hold both plans and their drawings', () => {
    expect([...files.keys()]).toEqual([
      'lumber/buying-list.csv',
      'lumber/strip-plan.csv',
      'lumber/strip-plan.svg',
      'lumber/cut-plan.csv',
      'lumber/cut-plan.svg',
    ]);
  });

  test('parts lie in their boards, apart from each other and from defects, and every part of the base is cut', () => {
    const [head, ...rows] = readCsv(text(files.get('lumber/cut-plan.csv')!));
    const col = (name: string): number => head!.findIndex((cell) => cell.startsWith(name));
    const parts = rows.filter((r) => r[col('row')] === 'part');
    expect(parts.map((r) => r[col('what')]).sort()).toEqual(
      ['B1', 'B2', 'F1', 'F2', 'P1', 'P2', 'P3', 'P4', 'R1', 'R2', 'S1'].sort(),
    );
    const box = (r: readonly string[]) => {
      const [x, y, l, w] = ['along', 'across', 'L', 'W'].map((name) => parseLength(`${r[col(name)]} in`)) as number[];
      return { board: r[0]!, from: x!, to: x! + l!, near: y!, far: y! + w! };
    };
    const boxes = parts.map(box);
    // Printed to 1/32 in, each number off by half of it.
    const OFF = INCH / 32;
    const apart = (a: { from: number; to: number; near: number; far: number }, b: typeof a, by: number): boolean =>
      a.to + by <= b.from || b.to + by <= a.from || a.far + by <= b.near || b.far + by <= a.near;
    boxes.forEach((a, k) => {
      const board = boards.find(({ mark }) => mark === a.board)!;
      expect(a.to).toBeLessThanOrEqual(board.length + OFF);
      expect(a.far).toBeLessThanOrEqual(board.width + OFF);
      for (const defect of board.defects) expect(apart(a, defect, -OFF)).toBe(true);
      for (const b of boxes.slice(k + 1)) expect(a.board !== b.board || apart(a, b, INCH / 8 - 2 * OFF)).toBe(true);
    });
  });

  test('the cut list and the model name the board of each part', async () => {
    const lists = await listFiles(job);
    const [head, ...rows] = readCsv(text(lists.get('cut-list.csv')!));
    const posts = rows.find((r) => r[1] === 'post')!;
    expect(posts[head!.indexOf('board')]).toMatch(/^P1 \d+; P2 \d+; P3 \d+; P4 \d+$/);
    // Drawn and planned in eight strips: each goes by its place from the left edge.
    const { strips } = await paperPlan(job);
    const told = rows.filter((r) => r[1] === 'strip').flatMap((r) => r[head!.indexOf('board')]!.split('; '));
    expect(told.sort()).toEqual(strips!.status.plan!.strips.map(({ show }, k) => `T${k + 1} ${show.mark}`).sort());
    const model = JSON.parse(text((await modelFile(job)).get('model.json')!));
    expect(model.lumber.strips.plan.strips).toHaveLength(8);
    expect(model.lumber.cuts.length).toBeGreaterThan(0);
  });
});

describe('the board of each strip', async () => {
  const metric = metricWithBoards();
  const plan = await paperPlan(metric);
  const strips = plan.strips!.status.plan!.strips;

  test('both halves of a strip over the center line come from one board', () => {
    const found = boardsOfPieces(plan, metric.nominal);
    expect(['T1', 'T3', 'T4A', 'T4B', 'T5', 'T7'].map((mark) => found.get(mark))).toEqual(
      [0, 2, 3, 3, 4, 6].map((k) => strips[k]!.show.mark),
    );
  });

  test('two layers by layer; one over the other where one is drawn; none where more or fewer are planned', () => {
    const bottom = { ...strips[0]!.show, mark: 'Z' };
    const status = {
      ...plan.strips!.status,
      plan: { ...plan.strips!.status.plan!, strips: strips.with(0, { ...strips[0]!, bottom }) },
    };
    const layered = boardsOfPieces({ ...plan, strips: { ...plan.strips!, status } }, metric.nominal);
    expect(layered.get('T1')).toBe(`${strips[0]!.show.mark} over Z`);
    const fewer = { ...status, plan: { ...status.plan, strips: strips.slice(1) } };
    const none = boardsOfPieces({ ...plan, strips: { ...plan.strips!, status: fewer } }, metric.nominal);
    expect([none.get('T1'), none.get('P1')]).toEqual([undefined, layered.get('P1')]);
  });
});

describe('boards that do not make the top are told why', () => {
  const why = async (rows: readonly string[]): Promise<string> => {
    const other = readingWithBoards(['mark,thickness,width,length', ...rows].join('\n'));
    const plan = await lumberPlan(other, { strips: 70_000, cuts: 1 });
    return lumberReport(other, plan, 'in').find(({ title }) => title.startsWith('Strip plan'))!.lines[0]!;
  };
  const pile = (count: number, thickness: string, width: string): string[] =>
    Array.from({ length: count }, (_, k) => `${k + 1},${thickness},${width},90 in`);

  test('too few, too thin, too narrow', async () => {
    expect(await why(pile(5, '2 1/2 in', '6 in'))).toMatch(
      /^8 strips are wanted, and 5 boards are dry, long and wide enough/,
    );
    expect(await why(pile(9, '2 in', '6 in'))).toMatch(
      /no order of these boards gives the wedge.*; 0 of 9 boards are thick/,
    );
    expect(await why(pile(8, '2 1/2 in', '4 in'))).toMatch(
      /no order of these boards gives the wedge at its full width; 8 of 8/,
    );
  });
});

describe('boards as measured', () => {
  const found = (rows: readonly string[]) => {
    const head = 'mark,thickness,width,length,moisture';
    const { records, assembly } = readingWithBoards([head, ...rows].join('\n'));
    return measuredBoards.run({ boards: records.boards!, assembly, units: 'in' } as never);
  };

  test('too wet, too dry for pins, too short', () => {
    const all = found([
      '1,2 in,5 in,90 in,9.5 %',
      '2,2 in,5 in,90 in,6.5 %',
      '3,2 in,5 in,60 in,8 %',
      '4,1 in,5 in,90 in,8 %',
    ]);
    expect(all.map((f) => [f.verdict, f.where])).toEqual([
      ['look again', 'moisture'],
      ['look again', 'meter'],
      ['ok', 'size'],
    ]);
    expect(all[0]!.because).toMatch(/^board 1: up to 9.5 % moisture/);
    expect(all[2]!.because).toMatch(
      /^boards 3, 4: too short or too thin for any strip of the top, which wants 86 in x 1 15\/32 in/,
    );
  });

  test('limits are kept, and nothing is said without boards', () => {
    expect(found(['1,2 in,5 in,90 in,9 %', '2,2 in,5 in,90 in,7 %']).map((f) => f.verdict)).toEqual(['ok']);
    expect(measuredBoards.run({ assembly: job.assembly } as never)).toEqual([]);
  });
});
