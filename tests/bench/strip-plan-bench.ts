import { loadSolver } from '../../lib/derive/lumber/master.ts';
import { checkStripPlan } from '../../lib/derive/lumber/strip-plan/check-strip-plan.ts';
import type { StripProblem } from '../../lib/derive/lumber/strip-plan/strip-problem.ts';
import { planStrips } from '../../lib/derive/lumber/strip-plan/strip-search.ts';
import { tableText } from '../../lib/writers/table-text.ts';
import { randomPile, TRIAL_WEIGHTS } from '../lumber/strip-plan/random-boards.ts';
import { judgeByProgram } from '../lumber/strip-plan/strip-judge.ts';

/** Boards, strips, layers, mm off every board, piles, seconds for each. */
const SIZES = [
  [8, 4, 'two', 0, 20, 4],
  [16, 8, 'two', 0, 20, 4],
  [24, 8, 'two', 0, 20, 4],
  [24, 8, 'two', 2, 20, 4],
  [24, 8, 'two', 3, 20, 4],
  [24, 8, 'either', 0, 20, 4],
  [24, 8, 'either', 2, 10, 4],
  [24, 8, 'either', 3, 10, 4],
  [28, 8, 'two', 0, 10, 4],
  [32, 8, 'two', 0, 10, 5],
  [32, 8, 'either', 0, 10, 5],
  [40, 8, 'two', 0, 10, 5],
] as const;

/** Processor seconds of this thread's process; what others do on the machine hardly counts. */
function spent(since: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1e6;
}

function run(problem: StripProblem, seconds: number) {
  const start = process.cpuUsage();
  const search = planStrips(problem);
  let status = search.advance(5_000);
  while (!status.done && spent(start) < seconds) status = search.advance(5_000);
  if (status.plan) {
    const faults = checkStripPlan(problem, status.plan);
    if (faults.length > 0) throw new RangeError(JSON.stringify(faults));
  }
  return { ...status, seconds: spent(start) };
}

/** Time to the proof, and the gap where time ran out; then the same model given to a general solver. */
export async function stripPlanBench(): Promise<string> {
  const rows = SIZES.map(([boards, strips, layers, thinner, piles, seconds]) => {
    const runs = Array.from({ length: piles }, (_, k) =>
      run(randomPile({ seed: k + 1, boards, strips, thinner, settings: { layers } }), seconds),
    );
    const times = runs.map((r) => r.seconds).sort((a, b) => a - b);
    const worst = Math.max(...runs.map((r) => (r.done ? 0 : (r.gap ?? Number.POSITIVE_INFINITY))));
    const proved = runs.filter((r) => r.done).length;
    return [
      `${boards}`,
      `${strips}`,
      layers,
      `${thinner}`,
      `${proved} of ${piles}`,
      `${times[piles >> 1]!.toFixed(2)} s`,
      `${times.at(-1)!.toFixed(2)} s`,
      `${(100 * worst).toFixed(2)} %`,
    ];
  });
  const right = (head: string) => ({ head, align: 'right' as const });
  const heads = ['boards', 'strips', 'layers', 'mm thinner', 'proved', 'median', 'longest', 'worst gap'];
  const own = tableText(heads.map(right), rows);
  return `strip plan, processor time\n${own}\n\nthe same model by a general solver (HiGHS, 60 s), underside left out\n${await judged()}`;
}

const JUDGED = [
  [8, 4, 0],
  [16, 8, 0],
  [24, 8, 0],
  [24, 8, 2],
] as const;

async function judged(): Promise<string> {
  const solver = await loadSolver();
  const rows = JUDGED.map(([boards, strips, thinner]) => {
    const preference = { mode: 'weighted', weights: { ...TRIAL_WEIGHTS, undersideDefects: 0 } } as const;
    const problem = randomPile({ seed: 3, boards, strips, thinner, settings: { layers: 'two', preference } });
    const ours = run(problem, 60);
    const start = process.cpuUsage();
    const theirs = judgeByProgram(solver, problem, { nodes: 1e9, stop: () => spent(start) > 60 });
    const cost = (value: number | undefined): string => (Number.isFinite(value) ? value!.toFixed(3) : '-');
    return [
      `${boards}`,
      `${thinner}`,
      cost(ours.plan?.value),
      cost(ours.bound),
      `${ours.seconds.toFixed(2)} s`,
      cost(theirs.value),
      cost(theirs.bound),
      `${spent(start).toFixed(1)} s`,
    ];
  });
  const heads = ['boards', 'mm thinner', 'our cost', 'our bound', 'time', 'its cost', 'its bound', 'its time'];
  return tableText(
    heads.map((head) => ({ head, align: 'right' as const })),
    rows,
  );
}
