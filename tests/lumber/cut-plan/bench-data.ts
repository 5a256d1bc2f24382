import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CutProblem } from '../../../lib/derive/lumber/cut-plan/cut-problem.ts';
import type { OneBoard } from './best-pattern.ts';

const FOLDER = process.env['TABLEWRIGHT_BENCH_DATA'];

/** Whether the folder of published instances is there; they belong to others and are no part of this repository. */
export const HAS_DATA = FOLDER !== undefined && existsSync(FOLDER);

const read = (path: string): string => readFileSync(join(FOLDER!, path), 'utf8');

const table = (text: string): number[][] =>
  text
    .trim()
    .split('\n')
    .map((line) =>
      line
        .trim()
        .split(/[\s,]+/)
        .map(Number),
    )
    .filter((row) => row.every(Number.isFinite));

/** Cintra, Miyazawa, Wakabayashi, Xavier 2008: three sheet sizes, as many of each as wanted. */
export function sheets(file: string): CutProblem {
  const [[, kinds = 0] = [], ...rest] = table(read(`2d/cintra2008/${file}.txt`));
  const pieces = rest.slice(kinds);
  const total = pieces.reduce((sum, [, , demand]) => sum + demand!, 0);
  return {
    boards: rest.slice(0, kinds).map(([length, width, cost], n) => {
      return { id: `S${n}`, length: length!, width: width!, cost: cost!, avoid: [], count: total };
    }),
    parts: pieces.map(([length, width, count], n) => ({ id: `P${n}`, length: length!, width: width!, count: count! })),
    kerf: 0,
    first: 'rip',
  };
}

/** A published best value of a two-stage pattern of one board. */
export interface BestValue {
  readonly path: string;
  /** Cuts parallel to the width of the file come first, or across it. */
  readonly first: 'Horizontal' | 'Vertical';
  readonly best: number;
}

export const bestValues = (): BestValue[] =>
  read('2d/best_known/data_knapsack_2nho_2nvo_others.csv')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','))
    .map(([path, first, best]) => ({ path: path!, first: first as BestValue['first'], best: Number(best) }));

/** The board of a published knapsack; an item without a profit is worth its area. */
export function oneBoard(path: string): OneBoard {
  const [[, length = 0, width = 0] = []] = table(read(`2d/two_stage_knapsack/${path}_bins.csv`));
  const items = table(read(`2d/two_stage_knapsack/${path}_items.csv`)).map((row) => {
    const [, l, w] = row as [number, number, number];
    return [l, w, row.length > 4 ? row[3]! : l * w, row.at(-1)!] as const;
  });
  return { length, width, items };
}

/** Falkenauer's u120: strips to be cut to length from equal boards, and how many boards are enough. */
export function strips(): { name: string; problem: CutProblem; best: number }[] {
  const numbers = read('1d/binpack1.txt').trim().split(/\s+/);
  const problems: { name: string; problem: CutProblem; best: number }[] = [];
  for (let at = 1; at < numbers.length; ) {
    const [name, capacity, count, best] = [numbers[at]!, ...numbers.slice(at + 1, at + 4).map(Number)] as [
      string,
      number,
      number,
      number,
    ];
    const sizes = numbers.slice(at + 4, at + 4 + count).map(Number);
    problems.push({
      name,
      best,
      problem: {
        parts: sizes.map((length, n) => ({ id: `P${n}`, length, width: 10, count: 1 })),
        boards: [{ id: 'B', length: capacity, width: 10, cost: 1, avoid: [], count }],
        kerf: 0,
        first: 'rip',
      },
    });
    at += 4 + count;
  }
  return problems;
}
