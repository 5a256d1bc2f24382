import { marksText } from '../derive/cut-list/building-order.ts';
import type { BoardPlace, StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';
import type { Tally } from '../derive/lumber/tally.ts';
import { formatInches, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import type { Table } from './cut-list-table.ts';
import { areaText } from './term-words.ts';

const fine = (mm: Mm, units: UnitSystem): string =>
  units === 'in' ? formatInches(mm, { mark: '' }) : formatMm(mm, 1, 'nearest', '');
const down = (mm: Mm, units: UnitSystem): string =>
  units === 'in' ? formatInches(mm, { rounding: 'down', mark: '' }) : formatMm(mm, 1, 'down', '');

const lies = ({ mark, faceUp, barkUp, turned }: BoardPlace): string[] => [
  mark,
  faceUp,
  barkUp ? 'up' : 'down',
  endFirst(turned),
];

/** Which end of a board lies at the reference end of the top. */
export const endFirst = (turned: boolean): string => (turned ? 'far end first' : 'reference end first');

/** Which board goes where, from the left edge to the right as one looks down on the show face. */
export function stripPlanTable({ strips }: StripPlan, units: UnitSystem): Table {
  const right = (head: string) => ({ head, align: 'right' }) as const;
  return {
    columns: [
      right('strip'),
      right(`from (${units})`),
      right(`to (${units})`),
      right(`rip to (${units})`),
      right(`T (${units})`),
      right(`spare (${units})`),
      { head: 'board' },
      { head: 'face up' },
      { head: 'bark' },
      { head: 'lies' },
      right(`starts at (${units})`),
      right(`rip off (${units})`),
      { head: 'under board' },
      { head: 'its face up' },
      { head: 'it lies' },
      right(`it starts at (${units})`),
      { head: 'remarks' },
    ],
    rows: strips.map(({ from, to, ripWidth, thickness, reserve, show, bottom }, k) => [
      `${k + 1}`,
      fine(from, units),
      fine(to, units),
      fine(ripWidth, units),
      down(thickness, units),
      down(reserve, units),
      ...lies(show),
      fine(show.startsAt, units),
      fine(show.ripOff, units),
      bottom?.mark ?? '',
      bottom?.faceUp ?? '',
      bottom ? endFirst(bottom.turned) : '',
      bottom ? fine(bottom.startsAt, units) : '',
      show.shownDefects > 0.005 ? `${areaText(show.shownDefects, units)} of defects show` : '',
    ]),
  };
}

/** What is bought against what is needed. */
export function tallyTable({ strips, spares, rest }: Tally): Table {
  return {
    columns: [{ head: 'need' }, { head: 'lumber' }, { head: 'boards' }, { head: 'missing', align: 'right' }],
    rows: [
      ...strips.map(({ need, boards, missing }) => [
        `${need.name} ${marksText(need.marks)}`,
        need.lumber ?? '',
        boards.join(', '),
        `${missing}`,
      ]),
      ['spare', strips[0]?.need.lumber ?? '', spares.boards.join(', '), `${spares.wanted - spares.boards.length}`],
      [
        'other parts',
        '',
        `room for ${formatNumber(rest.left, 1)} of ${formatNumber(rest.boardFeet, 1)} bd ft`,
        `${formatNumber(Math.max(0, rest.boardFeet - rest.left), 1)} bd ft`,
      ],
    ],
  };
}
