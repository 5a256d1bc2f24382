import { checkCutPlan } from '../../lib/derive/lumber/cut-plan/check-cut-plan.ts';
import { BOUND_HOLDS_FOR } from '../../lib/derive/lumber/cut-plan/cut-plan.ts';
import { planCuts } from '../../lib/derive/lumber/cut-plan/plan-cuts.ts';
import { loadSolver, type Solver } from '../../lib/derive/lumber/master.ts';
import { tableText } from '../../lib/writers/table-text.ts';
import { drawnProblem } from '../lumber/cut-plan/drawn-problem.ts';

/** Parts, sizes among them, board area over part area, seconds for each job: about two minutes in all. */
const SIZES = [
  [20, 6, 2, 5],
  [30, 9, 2, 5],
  [100, 22, 1.4, 5],
  [300, 45, 1.4, 5],
] as const;

const SEEDS = 5;

/** Gap to the own bound and yield after so many seconds of processor time, some jobs of each size. */
export async function cutPlanBench(): Promise<string> {
  const solver = await loadSolver();
  const rows = SIZES.map(([parts, types, plenty, seconds]) => {
    const jobs = Array.from({ length: SEEDS }, (_, n) =>
      run(solver, drawnProblem(parts, types, n + 1, plenty), seconds),
    );
    const gaps = jobs.map((j) => j.gap).sort((a, b) => a - b);
    const yields = jobs.map((j) => j.yield).sort((a, b) => a - b);
    const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;
    const proved = jobs.filter((j) => j.optimal).length;
    const middle = gaps[SEEDS >> 1]!;
    const ends = [percent(yields[0]!), percent(yields[SEEDS - 1]!)];
    return [`${parts}`, `${seconds} s`, percent(middle), percent(gaps[SEEDS - 1]!), `${proved}`, ...ends];
  });
  const heads = ['parts', 'time', 'median gap', 'worst', 'proved', 'least yield', 'most'];
  return `cut plan, ${SEEDS} jobs each\n${tableText(
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
    let now = search.advance(1);
    while (now.state === 'searching' && spent() < seconds) now = search.advance(1);
    const faults = now.plan ? checkCutPlan(problem, now.plan) : ['no plan'];
    if (faults.length > 0) throw new RangeError(faults.join('; '));
    return { gap: now.gap, yield: now.plan!.yield, optimal: now.state === 'optimal' };
  } finally {
    search.dispose();
  }
}
