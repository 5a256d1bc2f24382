import { type Override, parseAssignment } from '../../lib/params/assignment.ts';
import { defineParams } from '../../lib/params/define-params.ts';
import { choice, count, division, flag, length, lengths, quantity, text } from '../../lib/params/fields.ts';
import { type Outcome, readSources } from '../../lib/params/read-values.ts';
import { renderIssues } from '../../lib/params/render-issue.ts';
import { group } from '../../lib/params/spec.ts';

/** One parameter of every kind, a group in a group, and rules with and without limits. */
export const spec = defineParams(
  {
    top: group('Top', {
      length: length({ label: 'length', default: '84 in', min: '24 in', max: '12 ft', help: 'along the grain' }),
      thickness: length({ label: 'thickness at the center line', default: '2 1/4 in', min: '3/4 in', max: '4 in' }),
      edgeThickness: length({
        label: 'thickness at the long edges',
        default: '1 1/8 in',
        min: '6 mm',
        max: '4 in',
        because: 'under 6 mm an edge chips in use',
      }),
      strips: division({ label: 'strips', default: 8, min: 1, max: 40, minWidth: '1 in', maxWidth: '12 in' }),
      layers: count({ label: 'layers', default: 1, min: 1, max: 3 }),
      wood: choice({ label: 'wood', options: ['cherry', 'walnut', 'white oak'] }),
    }),
    base: group('Base', {
      tenons: flag({ label: 'loose tenons', default: true }),
      rail: group('Rail', {
        offsets: lengths({ label: 'offsets', default: ['10 in', '20 in'], min: '1 in', max: '60 in', maxItems: 4 }),
      }),
    }),
    moisture: quantity({ label: 'moisture in the shop', unit: '%', default: 7.5, min: 4, max: 20 }),
    note: text({ label: 'note', default: '', maxLength: 80 }),
  },
  [
    {
      fields: ['top.edgeThickness', 'top.thickness'],
      check: ({ top }) =>
        top.edgeThickness > top.thickness
          ? { path: 'top.edgeThickness', max: top.thickness, because: 'the upper limit is top.thickness' }
          : undefined,
    },
    {
      fields: ['base.rail.offsets', 'top.length'],
      check: ({ base, top }, say) => {
        const last = Math.max(0, ...base.rail.offsets);
        return last > top.length / 2
          ? { path: 'base.rail.offsets', because: `${say(last)} is past the middle, ${say(top.length / 2)}`, try: [] }
          : undefined;
      },
    },
    {
      fields: ['top.layers', 'top.wood'],
      check: ({ top }) =>
        top.wood === 'white oak' && top.layers > 1
          ? [{ path: 'top.layers', max: 1, because: 'white oak is used in one layer' }]
          : [],
    },
  ],
);

/** Arguments of `--set` that are known to be well formed. */
export function sets(...args: readonly string[]): readonly Override[] {
  return args.map((argument) => {
    const { override } = parseAssignment(argument);
    if (!override) throw new Error(`not an assignment: ${argument}`);
    return override;
  });
}

export function read(given: unknown, ...args: readonly string[]): Outcome<typeof spec.fields> {
  return readSources(spec, [{ values: given, from: 'the design file' }], sets(...args));
}

/** The text of all issues. */
export function refusal(given: unknown, ...args: readonly string[]): string {
  return renderIssues(read(given, ...args).issues ?? [], 'in');
}
