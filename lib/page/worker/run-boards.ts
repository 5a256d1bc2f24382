import type { Design } from '../../build/design.ts';
import { makeJob } from '../../build/job.ts';
import { FULL_WORK } from '../../build/lumber-plan.ts';
import type { StripsFound } from '../../build/search-strips.ts';
import { stripProblemOf } from '../../build/strip-problem-of.ts';
import { explainSteps, type StripShortage } from '../../derive/lumber/strip-plan/explain-infeasible.ts';
import type { StripProblem } from '../../derive/lumber/strip-plan/strip-problem.ts';
import { planStrips } from '../../derive/lumber/strip-plan/strip-search.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { BoardsAnswer, BoardsQuestion, BoardsTold } from './messages.ts';
import type { Turns } from './serve-latest.ts';
import { tellBoards } from './tell-boards.ts';

/** How the planning of one question takes turns with whatever else happens, and where it answers. */
export interface BoardsTurns extends Turns {
  answer(answer: BoardsAnswer): void;
}

/** Work between two turns: some hundredths of a second. */
const STRETCH = 5_000;

/** Plans the strips as far as the papers do, and tells every better plan on the way. Ends early for a later question. */
export async function runBoards(design: Design, question: BoardsQuestion, turns: BoardsTurns): Promise<void> {
  const { serial, values, units, shop, records } = question;
  try {
    const job = makeJob({ ...design, units }, values, shop, records);
    const problem = stripProblemOf(job, records.boards ?? []);
    if (!problem) {
      turns.answer({ serial, kind: 'done' });
      return;
    }
    const found = await search(problem, question, turns);
    if (!turns.isStale()) turns.answer({ serial, kind: 'done', told: tellStrips(found, units) });
  } catch (error) {
    turns.answer({ serial, kind: 'failed', because: error instanceof Error ? error.message : String(error) });
  }
}

/** Said with every plan: the page does not cut the other parts. */
const STRIPS_ALONE =
  'the strips alone: where other parts would have no wood, the papers keep boards for them, and their strips come out otherwise';

function tellStrips(found: StripsFound, units: UnitSystem): BoardsTold {
  const told = tellBoards(found, units);
  return told.table ? { ...told, lines: [...told.lines, STRIPS_ALONE] } : told;
}

async function search(problem: StripProblem, { serial, units }: BoardsQuestion, turns: BoardsTurns) {
  const found = planStrips(problem);
  let status = found.status;
  let told = Infinity;
  while (!status.done && status.work < FULL_WORK.strips && !turns.isStale()) {
    const { work } = status;
    status = found.advance(STRETCH);
    if (status.work === work) break;
    if (status.plan && status.plan.value < told && !status.done) {
      told = status.plan.value;
      turns.answer({ serial, kind: 'searching', told: tellStrips({ problem, status, stopped: false }, units) });
    }
    await turns.turn();
  }
  if (!status.done || status.plan) return { problem, status, stopped: false };
  turns.answer({ serial, kind: 'mending' });
  const shortage = await missing(problem, turns);
  return { problem, status, stopped: false, ...(shortage ? { shortage } : {}) };
}

/** What keeps the boards from making the top, and what would mend it: many small searches. */
async function missing(problem: StripProblem, turns: BoardsTurns): Promise<StripShortage | undefined> {
  const looks = explainSteps(problem);
  for (;;) {
    await turns.turn();
    if (turns.isStale()) return undefined;
    const { done, value } = looks.next();
    if (done) return value;
  }
}
