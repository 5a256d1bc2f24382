import { checkCutPlan } from '../../lib/derive/lumber/cut-plan/check-cut-plan.ts';
import { BOUND_HOLDS_FOR } from '../../lib/derive/lumber/cut-plan/cut-plan.ts';
import { planCuts } from '../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver, type Solver } from '../../lib/derive/lumber/master.ts';
import { tableText } from '../../lib/writers/table-text.ts';
import { drawnProblem } from '../lumber/cut-plan/drawn-problem.ts';

/** Parts, sizes among them, board area over part area, jobs, most processor seconds for each: some six minutes in all. */
const SIZES = [
  [20, 6, 2, 10, 60],
  [30, 9, 1.4, 10, 5],
  [100, 22, 1.4, 10, 5],
  [300, 45, 1.4, 10, 5],
  [1000, 90, 1.4, 3, 20],
] as const;

/** Gap that a plan should come below, share of the bound. */
const WANTED = 0.02;

/** Gap to the own bound and yield after so many seconds of processor time; how soon there was a plan, and a good one. */
export async function cutPlanBench(): Promise<string> {
  const solver = await loadSolver();
  const rows = SIZES.map(([parts, types, plenty, jobs, seconds]) => {
    const runs = Array.from({ length: jobs }, (_, n) =>
      run(solver, drawnProblem(parts, types, n + 1, plenty), seconds),
    );
    const sorted = (of: (one: (typeof runs)[number]) => number): number[] => runs.map(of).sort((a, b) => a - b);
    const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;
    const after = (times: readonly number[]): string =>
      Number.isFinite(times[jobs >> 1]) ? `${times[jobs >> 1]!.toFixed(2)} s` : '-';
    const gaps = sorted((r) => r.gap);
    const yields = sorted((r) => r.yield);
    return [
      `${parts}`,
      `${jobs}`,
      `${seconds} s`,
      after(sorted((r) => r.firstPlan)),
      after(sorted((r) => r.good)),
      percent(gaps[jobs >> 1]!),
      percent(gaps.at(-1)!),
      `${runs.filter((r) => r.optimal).length}`,
      `${Math.max(...runs.map((r) => r.seconds)).toFixed(1)} s`,
      percent(yields[0]!),
      percent(yields.at(-1)!),
    ];
  });
  const heads = [
    'parts',
    'jobs',
    'limit',
    'first plan',
    `within ${100 * WANTED} %`,
    'median gap',
    'worst',
    'proved',
    'longest',
    'least yield',
    'most',
  ];
  return `cut plan, processor time\n${tableText(
    heads.map((head) => ({ head, align: 'right' as const })),
    rows,
  )}\n${BOUND_HOLDS_FOR}`;
}

function run(solver: Solver, problem: Parameters<typeof planCuts>[0], seconds: number) {
  const search = planCuts(problem, solver);
  const start = process.cpuUsage();
  const spent = (): number => {
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1e6;
  };
  try {
    let [firstPlan, good] = [Infinity, Infinity];
    let now = search.advance(0);
    do {
      now = search.advance(1);
      if (now.plan) firstPlan = Math.min(firstPlan, spent());
      if (now.gap <= WANTED) good = Math.min(good, spent());
    } while (now.state === 'searching' && spent() < seconds);
    const faults = now.plan ? checkCutPlan(problem, now.plan) : ['no plan'];
    if (faults.length > 0) throw new RangeError(faults.join('; '));
    return {
      gap: now.gap,
      yield: now.plan!.yield,
      optimal: now.state === 'optimal',
      seconds: spent(),
      firstPlan,
      good,
    };
  } finally {
    search.dispose();
  }
}
