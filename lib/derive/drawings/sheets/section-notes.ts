import type { SheetRoom } from '../../../drawing/sheet.ts';
import type { LengthLook } from '../../../drawing/style.ts';
import { partOf } from '../../../model/assembly.ts';
import type { Mortise } from '../../../model/feature.ts';
import { formatNumber } from '../../../units/format-length.ts';
import { degrees, type Mm } from '../../../units/mm.ts';
import { CLEAN_UP, UNDERSIDE_COVER } from '../../checks/slot-cover.ts';
import type { HalfTop } from './half-top.ts';
import type { Note } from './note-block.ts';
import { sayLength } from './say-length.ts';
import type { SheetSource } from './sheet-source.ts';
import type { TopSection } from './top-section.ts';

/** A slope that no rule shows: the top is as thick at its edge as on its center line. */
const LEVEL = 1e-6;

/** What a section of a top does not show: where it is cut, what slots are gauged from, the slope, what was measured. */
export function sectionNotes(
  source: SheetSource,
  top: TopSection,
  { slope }: HalfTop,
  along: Mm,
  other: string,
  { heading, style }: SheetRoom,
): Note[] {
  const look = style.lengths;
  const say = (mm: Mm, rounding?: 'up'): string => sayLength(mm, look, rounding);
  const slot = firstSlot(source, top);
  return [
    {
      head: 'Cut at',
      text: `${say(along)} from the reference end${slot ? ', through the slots' : ''}; ${other}`,
    },
    ...(Math.abs(slope) < LEVEL ? [] : [{ head: 'Slope', text: slopeWords(slope, look) }]),
    ...(slot
      ? [
          {
            head: 'Slots',
            text:
              `gauge ${say(slot.at[2])} from the show face to the middle; ${say(slot.width)} thick, ` +
              `${say(slot.depth)} deep. The cover under each is told at its thin end; cleaning up takes up to ` +
              `${say(CLEAN_UP, 'up')} of it, and ${say(UNDERSIDE_COVER, 'up')} is wanted after that.`,
          },
        ]
      : []),
    { head: 'Taper', text: 'thickness is rounded up, cover and height down; nothing is drawn steeper than it is' },
    ...(source.measured === undefined
      ? []
      : [{ head: 'Measured', text: measuredWords(source.measured, heading.date) }]),
  ];
}

/** Dates as YYYY-MM-DD stand in the order of their letters. */
const measuredWords = (measured: string, revision: string): string =>
  `underside as read on ${measured}${measured > revision ? `, which is later than this revision of ${revision}` : ''}`;

function firstSlot({ assembly }: SheetSource, { part }: TopSection): Mortise | undefined {
  return (part.members ?? [])
    .flatMap((id) => partOf(assembly, id).features)
    .find((f): f is Mortise => f.kind === 'mortise');
}

/** Degrees, and the rise over a length that a rule shows. */
function slopeWords(slope: number, look: LengthLook): string {
  const [run, words] = look.system === 'mm' ? [100, '100 mm'] : [254, '10"'];
  const plain = look.system === 'both' ? { ...look, system: 'in' as const } : look;
  return `the underside rises ${formatNumber(degrees(Math.atan(slope)), 2)} deg to the edge: ${sayLength(run * slope, plain)} over ${words}`;
}
