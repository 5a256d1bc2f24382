import type { Shop } from '../../shop/shop.ts';
import type { Mm } from '../../units/mm.ts';
import { THICKNESS_CLASSES, type ThicknessClassId } from '../../wood/thickness-classes.ts';
import { type BoardsThatDo, boardsThatDo } from './boards-that-do.ts';
import type { BuyingList } from './buying-list.ts';
import type { CutJob } from './cut-plan/cut-jobs.ts';
import { type CutPart, RULE_STEP } from './cut-plan/cut-problem.ts';
import { pileOf } from './yard-pile.ts';

/** Parts of one size that no board is left for, and what they could be cut from. */
export interface BlanksWanted {
  readonly marks: readonly string[];
  /** As the buying list says it; absent when nothing that the yard has is thick enough. */
  readonly lumber?: ThicknessClassId;
  readonly pieces: number;
  /** mm, clear, allowances added. */
  readonly width: Mm;
  readonly length: Mm;
  /** Any one of these would do. */
  readonly boards: readonly BoardsThatDo[];
}

/** Parts of one job that are left over. */
export interface LeftOver {
  readonly job: CutJob;
  readonly left: readonly CutPart[];
}

/** A number of steps that is off by floating-point noise is the step itself (our convention). */
const NOISE = 1e-6;

/** What to buy for parts that are left over, size by size. Cut from such boards, and all others as planned, nothing is left over. */
export function blanksWanted(
  all: readonly LeftOver[],
  { rows }: BuyingList,
  { lumber: { grade } }: Shop,
): BlanksWanted[] {
  const classOf = (part: CutPart) => rows.find(({ marks }) => marks.includes(part.id))?.lumber;
  return all.flatMap(({ job, left }) => {
    const { kerf, step = RULE_STEP } = job.problem;
    const up = (mm: Mm): Mm => Math.ceil(mm / step - NOISE) * step;
    return alike(left, (part) => [classOf(part), up(part.length), up(part.width), part.together]).map((parts) => {
      const first = parts[0]!;
      const lumber = classOf(first);
      const nominal = THICKNESS_CLASSES.find(({ id }) => id === lumber)?.nominal ?? 0;
      const size = {
        pieces: parts.reduce((sum, { count }) => sum + count, 0),
        width: up(first.width),
        length: up(first.length),
      };
      const together = first.together !== undefined;
      const boards = boardsThatDo({ ...size, together }, up(kerf), pileOf(grade, nominal));
      return { marks: parts.map(({ id }) => id), ...(lumber ? { lumber } : {}), ...size, boards };
    });
  });
}

function alike<T>(items: readonly T[], keyOf: (item: T) => readonly unknown[]): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item).join();
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups.values()];
}
