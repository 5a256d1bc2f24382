import { type Command, ONE_DESIGN } from '../command.ts';
import { EXIT } from '../exit.ts';
import { withRequest } from '../input/with-request.ts';
import { blocking, countsText, countVerdicts, findingsText } from '../report/findings-text.ts';

/** What the checks say of a design. */
export const check: Command = {
  name: 'check',
  summary: 'what the checks say of a design, worst first; fails on "change it"',
  args: ONE_DESIGN,
  options: ['set', 'params', 'units', 'all', 'strict', 'json', 'quiet'],
  examples: ['check reading-table', 'check reading-table --set "top.edgeThickness=1/2 in" --all'],
  run: (call) =>
    withRequest(call, 'check', async ({ ref, design, values, shop }) => {
      const { makeJob } = await import('tablewright');
      const { all, strict, units } = call.options;
      const { findings } = makeJob({ ...design, units: units ?? design.units }, values, shop);
      const counts = countVerdicts(findings);
      const shown = all ? findings : findings.filter(({ verdict }) => verdict !== 'ok');
      if (shown.length > 0) call.reporter.result(findingsText(findings, all, call.reporter.paint));
      call.reporter.summary(`${shown.length > 0 ? '\n' : ''}${ref.name}: ${countsText(counts)}`);
      return {
        exit: blocking(findings, strict).length > 0 ? EXIT.failed : EXIT.good,
        json: { design: ref.name, counts, findings: shown },
      };
    }),
};
