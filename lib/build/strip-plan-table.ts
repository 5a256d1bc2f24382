import { marksText } from '../derive/cut-list/building-order.ts';
import { RIP_WORDS, ripSide } from '../derive/lumber/rip-side.ts';
import type { BoardPlace, StripPlace, StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';
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

/** What comes off a board, and where; two cells. */
function ripped(place: BoardPlace, strip: StripPlace, units: UnitSystem): string[] {
  const off = fine(place.ripOff, units);
  return off === '0' ? [off, ''] : [off, RIP_WORDS[ripSide(place, strip)]];
}

/** Which end of a board lies at the reference end of the top. */
export const endFirst = (turned: boolean): string => (turned ? 'far end first' : 'reference end first');

const under = (bottom: BoardPlace, strip: StripPlace, units: UnitSystem): string[] => [
  bottom.mark,
  bottom.faceUp,
  endFirst(bottom.turned),
  fine(bottom.startsAt, units),
  ...ripped(bottom, strip, units),
];

/** As many empty cells. */
const UNDER_NONE: readonly string[] = ['', '', '', '', '', ''];

/** Which board goes where, from the left edge to the right as one looks down on the show face. */
export function stripPlanTable({ strips }: Pick<StripPlan, 'strips'>, units: UnitSystem): Table {
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
      right(`rip (${units})`),
      { head: 'off' },
      { head: 'under board' },
      { head: 'its face up' },
      { head: 'it lies' },
      right(`it starts at (${units})`),
      right(`rip it (${units})`),
      { head: 'off it' },
      { head: 'remarks' },
    ],
    rows: strips.map((strip, k) => {
      const { show, bottom } = strip;
      return [
        `${k + 1}`,
        fine(strip.from, units),
        fine(strip.to, units),
        fine(strip.ripWidth, units),
        down(strip.thickness, units),
        down(strip.reserve, units),
        ...lies(show),
        fine(show.startsAt, units),
        ...ripped(show, strip, units),
        ...(bottom ? under(bottom, strip, units) : UNDER_NONE),
        show.shownDefects > 0.005 ? `${areaText(show.shownDefects, units)} of defects show` : '',
      ];
    }),
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
