import type { BoardPlan, CutPlan, Place } from './cut-plan.ts';
import type { CutProblem } from './cut-problem.ts';
import { RULE_STEP } from './cut-problem.ts';
import { replayCuts } from './replay-cuts.ts';

/** mm: sums of steps differ by no more. */
const EXACT = 1e-6;

/**
 * Everything that is wrong with a plan, in sentences; empty when all is well. Knows nothing of how the plan was found: it
 * looks at the problem, the places and the cuts only.
 */
export function checkCutPlan(problem: CutProblem, plan: CutPlan): string[] {
  return [
    ...kerfFaults(problem, plan),
    ...countFaults(problem, plan),
    ...togetherFaults(problem, plan),
    ...plan.boards.flatMap((board) => [...boardFaults(problem, plan.kerf, board), ...replayCuts(problem, plan, board)]),
    ...costFaults(problem, plan),
  ];
}

const stepOf = (problem: CutProblem): number => problem.step ?? RULE_STEP;

function kerfFaults(problem: CutProblem, { kerf }: CutPlan): string[] {
  const least = kerf - stepOf(problem) - EXACT;
  return kerf < problem.kerf - EXACT || problem.kerf < least ? [`a kerf of ${kerf} is not ${problem.kerf}`] : [];
}

function countFaults({ parts, boards }: CutProblem, plan: CutPlan): string[] {
  const placed = tally(plan.boards.flatMap((b) => b.placed.map((p) => p.part)));
  const opened = tally(plan.boards.map((b) => b.board));
  const known = new Set(parts.map((p) => p.id));
  const missing = parts.filter((p) => (placed.get(p.id) ?? 0) !== p.count);
  return [
    ...missing.map((p) => `${p.id} is cut ${placed.get(p.id) ?? 0} times, not ${p.count}`),
    ...[...placed.keys()].filter((id) => !known.has(id)).map((id) => `${id} is no part`),
    ...[...opened].flatMap(([id, n]) => {
      const board = boards.find((b) => b.id === id);
      if (!board) return [`${id} is no board`];
      return n > (board.count ?? 1) ? [`${id} is opened ${n} times`] : [];
    }),
  ];
}

function togetherFaults({ parts }: CutProblem, plan: CutPlan): string[] {
  const words = new Set(parts.flatMap((p) => p.together ?? []));
  return [...words].flatMap((word) => {
    const own = new Set(parts.filter((p) => p.together === word).map((p) => p.id));
    const spread = plan.boards.filter((b) => b.placed.some((p) => own.has(p.part)));
    return spread.length > 1 ? [`${word} comes from ${spread.length} boards`] : [];
  });
}

function boardFaults(problem: CutProblem, kerf: number, { board: id, placed }: BoardPlan): string[] {
  const board = problem.boards.find((b) => b.id === id);
  if (!board) return [];
  const faults: string[] = [];
  const whole = { x: 0, y: 0, length: board.length, width: board.width };
  const zones = board.avoid.map((z) => ({ x: z.from, y: z.near, length: z.to - z.from, width: z.far - z.near }));
  placed.forEach((place, n) => {
    const part = problem.parts.find((p) => p.id === place.part);
    if (part && !sizeFits(part, place, stepOf(problem))) faults.push(`${place.part} has the wrong size in ${id}`);
    if (!isInside(place, whole)) faults.push(`${place.part} reaches over ${id}`);
    if (zones.some((z) => apart(z, place) < -EXACT)) faults.push(`${place.part} lies on a zone of ${id}`);
    for (const other of placed.slice(n + 1)) {
      if (apart(place, other) < kerf - EXACT) faults.push(`${place.part} and ${other.part} are too near in ${id}`);
    }
  });
  return faults;
}

const sizeFits = (part: { length: number; width: number }, place: Place, step: number): boolean =>
  [place.length - part.length, place.width - part.width].every((more) => more > -EXACT && more < step + EXACT);

const isInside = (a: Place, b: Place): boolean =>
  a.x > b.x - EXACT &&
  a.y > b.y - EXACT &&
  a.x + a.length < b.x + b.length + EXACT &&
  a.y + a.width < b.y + b.width + EXACT;

/** mm between two rectangles in the direction in which they are further apart; negative when they overlap. */
const apart = (a: Place, b: Place): number =>
  Math.max(b.x - a.x - a.length, a.x - b.x - b.length, b.y - a.y - a.width, a.y - b.y - b.width);

function costFaults({ boards }: CutProblem, plan: CutPlan): string[] {
  const cost = plan.boards.reduce((sum, b) => sum + (boards.find((x) => x.id === b.board)?.cost ?? 0), 0);
  return Math.abs(cost - plan.cost) > 1e-6 * Math.max(1, cost) ? [`the boards cost ${cost}, not ${plan.cost}`] : [];
}

function tally(ids: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  return counts;
}
