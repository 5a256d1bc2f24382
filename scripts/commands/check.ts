import { makeJob } from '../../lib/build/job.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { type Command, ONE_DESIGN } from '../command.ts';
import { EXIT, type Exit } from '../exit.ts';
import { withRequest } from '../input/with-request.ts';
import { countsText, countVerdicts, findingsText } from '../report/findings-text.ts';

/** What the checks say of a design. */
export const check: Command = {
  name: 'check',
  summary: 'what the checks say of a design, worst first; fails on "change it"',
  args: ONE_DESIGN,
  options: ['set', 'params', 'units', 'all', 'strict', 'json', 'quiet'],
  examples: ['check reading-table', 'check reading-table --set "top.edgeThickness=1/2 in" --all'],
  run: (call) =>
    withRequest(call, 'check', ({ ref, design, values }) => {
      const { all, strict, units } = call.options;
      const { findings } = makeJob({ ...design, units: units ?? design.units }, values);
      const counts = countVerdicts(findings);
      const shown = all ? findings : findings.filter(({ verdict }) => verdict !== 'ok');
      if (shown.length > 0) call.reporter.result(findingsText(findings, all, call.reporter.paint));
      call.reporter.summary(`${shown.length > 0 ? '\n' : ''}${ref.name}: ${countsText(counts)}`);
      return { exit: verdictExit(findings, strict), json: { design: ref.name, counts, findings: shown } };
    }),
};

/** "Look again" passes unless one is strict; "not checked" always does. */
export function verdictExit(findings: readonly Finding[], strict: boolean): Exit {
  return blocking(findings, strict).length > 0 ? EXIT.failed : EXIT.good;
}

/** The findings that keep a design from being built. */
export const blocking = (findings: readonly Finding[], strict: boolean): readonly Finding[] =>
  findings.filter(({ verdict }) => verdict === 'change it' || (strict && verdict === 'look again'));
