import type { CutJob } from '../derive/lumber/cut-plan/cut-jobs.ts';
import { canServe } from '../derive/lumber/strip-plan/strip-model.ts';
import type { Board } from '../model/records.ts';
import { boardsOfCuts } from './boards-of-pieces.ts';
import { cutJobsOf } from './cut-jobs-of.ts';
import type { Job } from './job.ts';
import { noWood } from './no-wood.ts';
import { searchCuts } from './search-cuts.ts';
import type { StripsFound } from './search-strips.ts';
import { type LumberWork, type WoodPlan, woodPlan } from './wood-plan.ts';

/** Boards that the strips of the top would take, and that other parts need more. */
export interface KeptBoards {
  readonly boards: readonly string[];
  /** Marks of the parts that are cut from them. */
  readonly parts: readonly string[];
  /** What the strips cost more without these boards; absent when the terms of the strips stand in order. */
  readonly dearer?: number;
}

/** How boards are chosen for parts. */
interface Way {
  /** Boards that the strips have a use for count for so much more. */
  readonly dear: number;
  /** Not those that the best plan so far keeps. */
  readonly others?: true;
}

/** The cheapest boards; those first that the strips have no use for; others than these: our convention. */
const WAYS: readonly Way[] = [{ dear: 1 }, { dear: 10 }, { dear: 1, others: true }];

/** Boards kept for some parts may leave others without any: they are then planned together, so often (our convention). */
const ROUNDS = 3;

/** A plan of the wood, and which boards the strips may not take in it. */
type Keeping = WoodPlan & { readonly kept?: KeptBoards };

/** What is planned, and the plan whose strips may take any board. */
interface Planned {
  readonly job: Job;
  readonly boards: readonly Board[];
  readonly first: WoodPlan;
  readonly work: LumberWork;
}

/**
 * Where parts have no wood because the strips take it: boards that these parts are cut from, as if no strip were laid, are
 * kept from the strips. The fewest parts without wood count, then the best strips; where it helps nothing, or the top has no
 * plan without these boards, it stays with the plan before.
 */
export async function keepBoards(planned: Planned): Promise<Keeping> {
  let best: Keeping = planned.first;
  if (!best.strips?.status.plan || noWood(best).parts.length === 0) return best;
  const tried = new Set<string>();
  for (const { dear, others } of WAYS) {
    const not = (others && best.kept?.boards) ?? [];
    for await (const next of keptFor(planned, { dear, not }, tried)) {
      if (next.stopped) return { ...best, stopped: true };
      if (isBetter(next, best)) best = next;
    }
  }
  return best;
}

/** Plans with boards kept for the parts that have no wood, then also for those that would be cut from the same boards. */
async function* keptFor(planned: Planned, choice: Choice, tried: Set<string>): AsyncGenerator<Keeping> {
  const parts = new Set(noWood(planned.first).parts);
  for (let round = 0; round < ROUNDS; round++) {
    const next = await keeping(planned, parts, choice, tried);
    if (!next) return;
    yield next;
    const short = noWood(next).parts;
    if (short.length === 0) return;
    const beside = next.cuts.filter(({ progress }) => !progress.plan || progress.misfits.length > 0);
    for (const part of [...short, ...beside.flatMap(({ job }) => job.problem.parts.map(({ id }) => id))])
      parts.add(part);
  }
}

/** Fewer parts without wood, then the better strips. */
function isBetter(one: Keeping, other: Keeping): boolean {
  const [less, more] = [one, other].map((plan) => noWood(plan).parts.length) as [number, number];
  return less < more || (less === more && other.kept !== undefined && costOf(one) < costOf(other));
}

const costOf = ({ strips }: Keeping): number => strips?.status.plan?.value ?? Infinity;

/** The plan when boards are kept for some parts; undefined when there are none, it was tried before, or the top has no plan. */
async function keeping(
  { job, boards, first, work }: Planned,
  parts: ReadonlySet<string>,
  choice: Choice,
  tried: Set<string>,
): Promise<Keeping | undefined> {
  const strips = first.strips!;
  const wanted = await boardsFor(job, boards, parts, strips.problem, choice, work);
  if (wanted.stopped) return { ...first, stopped: true };
  const marks = wanted.boards;
  if (marks.length === 0 || tried.has(marks.join())) return undefined;
  tried.add(marks.join());
  const told = work.onProgress;
  const onProgress = told && ((text: string) => told(`boards ${marks.join(', ')} kept: ${text}`));
  const next = await woodPlan(job, boards, { ...work, explain: false, ...(onProgress ? { onProgress } : {}) }, marks);
  if (!next.stopped && !next.strips?.status.plan) return undefined;
  const dearer = dearerBy(strips, next.strips!);
  const from = new Set(marks);
  const cut = [...boardsOfCuts(next)].flatMap(([part, board]) => (from.has(board) ? [part] : []));
  return { ...next, kept: { boards: marks, parts: cut, ...(dearer === undefined ? {} : { dearer }) } };
}

const dearerBy = ({ problem, status: { plan: was } }: StripsFound, { status: { plan: is } }: StripsFound) =>
  problem.settings.preference.mode === 'weighted' && was && is ? is.value - was.value : undefined;

/** Which boards are wanted for parts. */
interface Choice {
  readonly dear: number;
  readonly not: readonly string[];
}

/** The boards that some parts are best cut from when none lies in the top but those settled by hand. */
async function boardsFor(
  job: Job,
  boards: readonly Board[],
  parts: ReadonlySet<string>,
  problem: StripsFound['problem'],
  { dear, not }: Choice,
  work: LumberWork,
): Promise<{ readonly boards: readonly string[]; readonly stopped: boolean }> {
  const pinned = (problem.pins ?? []).map(({ mark }) => mark);
  const useful = new Set(problem.boards.filter((board) => canServe(board, problem)).map(({ mark }) => mark));
  const jobs = cutJobsOf(job, boards, pinned).flatMap((one): CutJob[] => {
    const own = one.problem.parts.filter(({ id }) => parts.has(id));
    const free = one.problem.boards.filter(({ id }) => !not.includes(id));
    const pile = free.map((b) => (useful.has(b.id) ? { ...b, cost: b.cost * dear } : b));
    return own.length === 0 ? [] : [{ ...one, problem: { ...one.problem, parts: own, boards: pile } }];
  });
  const { cuts, stopped } = await searchCuts(jobs, work);
  return { boards: cuts.flatMap(({ progress }) => progress.plan?.boards.map(({ board }) => board) ?? []), stopped };
}
