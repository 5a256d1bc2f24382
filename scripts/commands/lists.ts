import { type Command, ONE_DESIGN } from '../command.ts';
import { EXIT } from '../exit.ts';
import { withRequest } from '../input/with-request.ts';

/** What has to be cut and bought for a design. */
export const lists: Command = {
  name: 'lists',
  summary: 'the cut list and the bill of materials of a design',
  args: ONE_DESIGN,
  options: ['set', 'params', 'units', 'json', 'quiet'],
  examples: ['lists reading-table', 'lists reading-table --units mm'],
  run: (call) =>
    withRequest(call, 'lists', async ({ ref, design, values, shop, records }) => {
      const { billTable, cutListTable, makeJob, tableText, warningOf } = await import('tablewright');
      const job = makeJob(design, values, shop, records);
      const { cutList, bill } = job;
      const warning = warningOf(job);
      const units = call.options.units ?? design.units;
      const cut = cutListTable(cutList, units);
      const buy = billTable(bill, units);
      const { paint } = call.reporter;
      const heading = (text: string): string => paint('bold', text);
      call.reporter.result(
        [
          ...(warning === undefined ? [] : [paint('red', warning), '']),
          heading(`Cut list: ${design.title}, revision ${design.revision}, ${cutList.pieces} pieces`),
          tableText(cut.columns, cut.rows),
          '',
          heading('Bill of materials'),
          tableText(buy.columns, buy.rows),
        ].join('\n'),
      );
      const forced = job.forced.length > 0 ? { forced: job.forced } : {};
      return { exit: EXIT.good, json: { design: ref.name, ...forced, cutList, bill } };
    }),
};
