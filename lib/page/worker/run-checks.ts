import type { Design } from '../../build/design.ts';
import { checkContext, makeJob } from '../../build/job.ts';
import { CHECKS } from '../../derive/checks/checks.ts';
import type { Finding } from '../../model/finding.ts';
import type { CheckAnswer, CheckQuestion } from './messages.ts';
import { isQuick } from './quick-checks.ts';
import type { Turns } from './serve-latest.ts';

/** How the checks of one question take turns with whatever else happens, and where they answer. */
export interface CheckTurns extends Turns {
  answer(answer: CheckAnswer): void;
}

/** Makes every check a turn of its own: first what they find, then what would mend it. Ends early for a later question. */
export async function runChecks(design: Design, question: CheckQuestion, turns: CheckTurns): Promise<void> {
  const { serial, values, units, shop, records } = question;
  try {
    const job = makeJob({ ...design, units }, values, shop, records);
    const context = checkContext({ ...design, units }, values, job.assembly, shop, job);
    const { tune: _, ...plain } = context;
    const toMend = [];
    for (const check of CHECKS) {
      if (turns.isStale()) return;
      const findings = check.run(plain);
      if (!isQuick(check)) turns.answer({ serial, kind: 'plain', check: check.name, findings });
      if (findings.some(canBeMended)) toMend.push(check);
      if (!isQuick(check)) await turns.turn();
    }
    await turns.rest();
    for (const check of toMend) {
      if (turns.isStale()) return;
      turns.answer({ serial, kind: 'fixes', check: check.name, findings: check.run(context) });
      await turns.turn();
    }
    turns.answer({ serial, kind: 'done' });
  } catch (error) {
    turns.answer({ serial, kind: 'failed', because: error instanceof Error ? error.message : String(error) });
  }
}

export const canBeMended = ({ verdict }: Finding): boolean => verdict === 'change it' || verdict === 'look again';
