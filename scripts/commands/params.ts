import type { ParamRow } from 'tablewright';
import { type Command, ONE_DESIGN } from '../command.ts';
import { EXIT } from '../exit.ts';
import { withRequest } from '../input/with-request.ts';
import type { Paint } from '../report/paint.ts';

/** The table of parameters of a design. */
export const params: Command = {
  name: 'params',
  summary: 'the parameters of a design: value, range, default and what they mean',
  args: ONE_DESIGN,
  options: ['set', 'params', 'units', 'json', 'quiet'],
  examples: ['params reading-table', 'params reading-table --set "top.length=72 in" --units mm'],
  run: (call) =>
    withRequest(call, 'params', async ({ ref, design, values }) => {
      const { describeParams, tableText, valueAt } = await import('tablewright');
      const units = call.options.units ?? design.units;
      const rows = describeParams(design.params, values, units).map((row) => {
        const number = valueAt(values, row.path);
        const changed = JSON.stringify(number) !== JSON.stringify(design.params.table.get(row.path)?.default);
        return { ...row, changed, mm: number };
      });
      const table = tableText(COLUMNS, rows.map(cells));
      call.reporter.result(paramsText(rows, table, call.reporter.paint));
      const changed = rows.filter((row) => row.changed).length;
      call.reporter.summary(`\n${rows.length} parameters; ${changed} differ from the default, marked ${MARK}`);
      const json = rows.map(({ mm, value, ...row }) => ({ ...row, value: mm, text: value }));
      return { exit: EXIT.good, json: { design: ref.name, units, params: json } };
    }),
};

interface Row extends ParamRow {
  readonly changed: boolean;
}

const MARK = '*';

const COLUMNS = [
  { head: ' ' },
  { head: 'path' },
  { head: 'value' },
  { head: 'range' },
  { head: 'default' },
  { head: 'what it is' },
];

/** One table with the headings of the groups in it; help stands below its row. */
function paramsText(rows: readonly Row[], table: string, paint: Paint): string {
  const [head = '', rule = '', ...lines] = table.split('\n');
  const body = rows.flatMap((row, k) => {
    const group = row.groups.join(', ');
    const heading = group && group !== rows[k - 1]?.groups.join(', ') ? ['', paint('bold', group)] : [];
    const line = row.changed ? paint('bold', lines[k]!) : lines[k]!;
    return [
      ...heading,
      line,
      ...[manyOptions(row), row.help, row.because].filter(Boolean).map((text) => `      ${paint('dim', text)}`),
    ];
  });
  return [head, rule, ...body].join('\n');
}

const cells = (row: Row): string[] => [
  row.changed ? MARK : '',
  row.path,
  row.value ?? '',
  rangeText(row),
  row.default,
  row.label,
];

function rangeText({ min, max, options, entries }: ParamRow): string {
  if (options.length > 0) return options.length > FEW ? `one of ${options.length}` : options.join(' | ');
  const range = min ? `${min} to ${max}` : `up to ${max}`;
  return entries ? `${range}; ${entries}` : range;
}

const manyOptions = ({ options }: ParamRow): string => (options.length > FEW ? options.join(' | ') : '');

/** More options than this would make the table too wide. */
const FEW = 4;
