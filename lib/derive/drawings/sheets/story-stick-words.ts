import type { LengthLook } from '../../../drawing/style.ts';
import type { Mm } from '../../../units/mm.ts';
import type { Note } from './note-block.ts';
import { sayDim, sayLength } from './say-length.ts';
import { jointNames, type StoryStick } from './story-stick.ts';
import type { FittedColumn } from './table-block.ts';

/** What a stick does not show by itself. */
export function stickNotes(stick: StoryStick, look: LengthLook): Note[] {
  const say = (mm: Mm): string => sayLength(mm, look);
  const { gauge, width, depth, play, joints } = stick;
  const sides =
    play === 0
      ? 'both sides alike'
      : `the first piece of each has the tight slots, the second those that are ${say(play)} longer; glue holds the tenon ` +
        'in the tight one, the play lets the pieces come flush at the ends';
  return [
    { head: 'Joints', text: `${joints.length}, one stick for all: ${jointNames(stick)}; ${sides}` },
    {
      head: 'Slots',
      text: `${say(width)} thick, ${say(depth)} deep; gauge ${say(gauge)} from the show face to the middle, always from that face`,
    },
    {
      head: 'Use',
      text: 'lay the end of the stick flush with the reference end of each strip; never turn it end for end',
    },
    {
      head: 'Check',
      text: 'at the far end the end of the stick and of the finished strip meet; else stop and find out why',
    },
  ];
}

/** Halves are rounded up in spite of rounding errors, mm. */
const HALVES: Mm = 1e-7;

/** Running figures of every slot: the middle, and both ends on either side. */
export function stickTable(
  { slots }: StoryStick,
  look: LengthLook,
): { readonly columns: readonly FittedColumn[]; readonly rows: readonly (readonly string[])[] } {
  const right = (head: string): FittedColumn => ({ head, align: 'right' });
  return {
    columns: ['slot', 'middle', 'tight from', 'to', 'long from', 'to'].map(right),
    rows: slots.map(({ middle, tight, long }, k) => [
      `${k + 1}`,
      ...[middle, ...tight, ...long].map((mm) => sayDim(mm + HALVES, look)),
    ]),
  };
}
