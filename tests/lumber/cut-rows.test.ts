import { describe, expect, it } from 'vitest';
import { paperPlan } from '../../lib/build/lumber-plan.ts';
import { lumberFiles } from '../../lib/build/output-lumber.ts';
import { parseLength } from '../../lib/units/parse-length.ts';
import { readCsv } from '../readers/csv.ts';
import { readingWithBoards } from './reading-boards.ts';

// Worked out from the places alone, the way a maker would with a rule: every piece begins where the blade that freed it ended.
interface CutRow {
  readonly row: string;
  readonly axis: 0 | 1;
  readonly at: number;
  readonly told: number | undefined;
  readonly piece: string;
  readonly near: string | undefined;
  readonly far: string | undefined;
}

const MADE = /^([^;]+?)(?:; near side is (piece \d+))?(?:; far side is (piece \d+))?(?:;.*)?$/;
const mm = (cell: string | undefined): number | undefined => (cell ? parseLength(`${cell} in`) : undefined);

function readCut([, , row, kind, along, across, length, width, remarks]: readonly string[]): CutRow {
  const [, piece, near, far] = MADE.exec(remarks!)!;
  const rip = kind === 'rip';
  expect(rip ? length : width).toBe('');
  const [at, told] = rip ? [mm(across), mm(width)] : [mm(along), mm(length)];
  return { row: row!, axis: rip ? 1 : 0, at: at!, told, piece: piece!, near, far };
}

/** Where the pieces on the bench begin on the board, along and across; mm. */
type Starts = Map<string, readonly [along: number, across: number]>;

function startOf(starts: Starts, { row, piece, axis }: CutRow): number {
  if (row === 'cut 1') starts.clear();
  if (piece === 'the board') starts.set(piece, [0, 0]);
  return starts.get(piece)![axis];
}

function layDown(starts: Starts, { piece, axis, at, near, far }: CutRow, kerf: number): void {
  const [along, across] = starts.get(piece)!;
  if (near) starts.set(near, [along, across]);
  if (far) starts.set(far, axis === 1 ? [along, at + kerf] : [at + kerf, across]);
}

describe('the cut rows of the cut plan', async () => {
  const job = readingWithBoards();
  const { kerf } = (await paperPlan(job)).cuts[0]!.progress.plan!;
  const text = new TextDecoder().decode((await lumberFiles(job)).get('lumber/cut-plan.csv')!);
  const cuts = readCsv(text).filter((row) => row[2]!.startsWith('cut '));

  it('say in L or W how much comes off, counted from the end or edge that the piece has then', () => {
    const starts: Starts = new Map();
    const begins = cuts.map((row) => {
      const cut = readCut(row);
      const begin = startOf(starts, cut);
      expect(cut.told ?? 0).toBeCloseTo(cut.near ? cut.at - begin : 0, 6);
      layDown(starts, cut, kerf);
      return begin;
    });
    expect(cuts.length).toBeGreaterThan(10);
    // Pieces whose zero was cut off before.
    expect(begins.filter((begin) => begin > 0).length).toBeGreaterThan(3);
  });
});
