import { type Call, type Command, ONE_DESIGN, type Result } from '../command.ts';
import { EXIT } from '../exit.ts';
import type { Request } from '../input/read-request.ts';
import { withRequest } from '../input/with-request.ts';
import type { Options } from '../line/options.ts';
import type { Complaint } from '../report/complaint.ts';
import { exitOf } from '../report/problem.ts';
import { blocking, countsText, countVerdicts } from '../report/verdict-counts.ts';

/** What the checks say of a design, as it is or over a range of its parameters. */
export const check: Command = {
  name: 'check',
  summary: 'what the checks say of a design, worst first; fails on "change it"',
  args: ONE_DESIGN,
  options: ['set', 'params', 'vary', 'chart', 'units', 'all', 'strict', 'json', 'quiet'],
  examples: [
    'check reading-table',
    'check reading-table --set "top.edgeThickness=1/2 in" --all',
    'check reading-table --vary "top.edgeThickness=1 in..1 1/2 in:5" --chart edge.svg',
    'check reading-table --vary frame.kind=bearer,posts,panel --vary "top.thickness=2 in,2 1/4 in"',
  ],
  run: checkDesign,
};

async function checkDesign(call: Call): Promise<Result> {
  const { options, reporter } = call;
  const wrong = atOdds(options);
  if (wrong.length > 0) {
    reporter.problems(wrong, '');
    return { exit: exitOf(wrong), json: {} };
  }
  return withRequest(call, 'check', async (request) => {
    if (options.vary.length === 0) return checkOne(request, call);
    const { checkRange } = await import('../vary/check-range.ts');
    return checkRange(request, call);
  });
}

/** Options that make no sense together. */
function atOdds({ vary, chart, strict }: Options): Complaint[] {
  const complaints: Complaint[] = [];
  if (chart !== undefined && vary.length === 0) {
    complaints.push({
      code: 'needs-option',
      given: '--chart',
      subject: '--vary',
      try: '--vary "top.edgeThickness=1 in..1 1/2 in:5"',
    });
  }
  if (chart !== undefined && !chart.endsWith('.svg')) {
    const name = `${chart.replace(/\.[a-z]+$/, '')}.svg`;
    complaints.push({ code: 'wrong-ending', given: chart, subject: '--chart', try: `--chart ${JSON.stringify(name)}` });
  }
  if (strict && vary.length > 0) {
    const because = 'a table over a range neither passes nor fails';
    complaints.push({ code: 'not-beside', given: '--strict', subject: '--vary', because });
  }
  return complaints;
}

async function checkOne({ ref, design, values, shop, records }: Request, { options, reporter }: Call): Promise<Result> {
  const { makeJob } = await import('tablewright');
  const { findingsText } = await import('../report/findings-text.ts');
  const { all, strict, units = design.units } = options;
  const { findings } = makeJob({ ...design, units }, values, shop, records);
  const counts = countVerdicts(findings);
  if (findings.length > 0) reporter.result(findingsText(findings, all, units, reporter.paint));
  reporter.summary(`${findings.length > 0 ? '\n' : ''}${ref.name}: ${countsText(counts)}`);
  return {
    exit: blocking(findings, strict).length > 0 ? EXIT.failed : EXIT.good,
    json: { design: ref.name, counts, findings: all ? findings : findings.filter(({ verdict }) => verdict !== 'ok') },
  };
}
