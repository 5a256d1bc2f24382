import design from '../../designs/reading-table/design.ts';
import { makeJob } from '../../lib/build/job.ts';
import { type LumberPlan, lumberPlan } from '../../lib/build/lumber-plan.ts';
import type { CutProblem } from '../../lib/derive/lumber/cut-plan/cut-problem.ts';
import { cutPlanOf } from '../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver, type SolverSource } from '../../lib/derive/lumber/master.ts';
import type { Board } from '../../lib/model/records.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { defineShop } from '../../lib/shop/shop.ts';

/** What is asked of the worker of the test. */
export type LumberQuestion =
  | { readonly kind: 'lumber'; readonly boards: readonly Board[]; readonly strips: number; readonly cuts: number }
  | { readonly kind: 'stop' }
  | { readonly kind: 'cuts'; readonly problem: CutProblem; readonly steps: number; readonly solver: SolverPlace };

/** Where the worker gets the solver from: an address that it is told, or bytes that it has fetched. */
type SolverPlace = { readonly address: string } | { readonly fetched: string };

/** How far the search is, then what it found, as JSON. */
export interface LumberAnswer {
  readonly progress?: string;
  readonly found?: string;
  readonly failed?: string;
}

interface Scope {
  postMessage(answer: LumberAnswer): void;
  onmessage: (event: { readonly data: LumberQuestion }) => void;
}

/** The lumber of the reading table, of these boards. */
export function readingLumber(boards: readonly Board[], work: Parameters<typeof lumberPlan>[1]): Promise<LumberPlan> {
  const values = readValues(design.params, design.values).values!;
  return lumberPlan(makeJob(design, values, defineShop(), { boards }), work);
}

async function sourceOf(place: SolverPlace): Promise<SolverSource> {
  if ('address' in place) return { locate: () => place.address };
  return { bytes: await (await fetch(place.fetched)).arrayBuffer() };
}

/** What a question comes to, as JSON. */
async function found(
  question: Exclude<LumberQuestion, { kind: 'stop' }>,
  onProgress: (text: string) => Promise<boolean>,
) {
  if (question.kind === 'lumber') return readingLumber(question.boards, { ...question, onProgress });
  return cutPlanOf(question.problem, await loadSolver(await sourceOf(question.solver)), question.steps);
}

if (typeof document === 'undefined' && 'postMessage' in globalThis) {
  const scope = globalThis as unknown as Scope;
  let stopped = false;
  const onProgress = async (progress: string): Promise<boolean> => {
    scope.postMessage({ progress });
    await new Promise((go) => setTimeout(go, 0));
    return stopped;
  };
  scope.onmessage = async ({ data }) => {
    stopped = data.kind === 'stop';
    if (data.kind === 'stop') return;
    try {
      scope.postMessage({ found: JSON.stringify(await found(data, onProgress)) });
    } catch (error) {
      scope.postMessage({ failed: String(error) });
    }
  };
}
