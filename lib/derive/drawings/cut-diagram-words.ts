import type { Pt, Text } from '../../drawing/entity.ts';
import { heightThatFits, roomFor } from '../../drawing/fit-text.ts';
import { LAYERS } from '../../drawing/layers.ts';
import type { Board } from '../../model/records.ts';
import type { Mm } from '../../units/mm.ts';
import type { Place } from '../lumber/cut-plan/cut-plan.ts';
import { freePlace, type Room } from './free-place.ts';
import type { SawLine } from './saw-lines.ts';

/** Heights of lettering in a part or an offcut, paper mm: the first that fits; our convention. */
const MARKS = [3, 2.5, 2, 1.6] as const;
const SMALL = [1.8, 1.5] as const;

/** Paper mm between mark and size of a part, and left free at the ends of either; our convention. */
const BETWEEN = 1.5;

/** A line of lettering takes so many heights of its capitals, tails included; our convention. */
const LINE_PITCH = 1.7;

/** Mark and size in the middle of a part: side by side, else one above the other, else the mark alone. */
export function partWords(place: Place, mark: string, say: (mm: Mm) => string, scale: number, bold = true): Text[] {
  const { x, y, length, width } = place;
  const deep = (heights: readonly number[]): number[] => heights.filter((h) => h * LINE_PITCH * scale <= width);
  const room = (length / scale) * 0.9;
  const size = `${say(length)} x ${say(width)}`;
  const height = heightThatFits(mark, deep(MARKS), room) ?? MARKS.at(-1)!;
  const set = (text: string, at: Pt, tall: number, more: Partial<Text>): Text => ({
    kind: 'text',
    layer: LAYERS.TEXT,
    text,
    at,
    height: tall,
    valign: 'middle',
    ...more,
  });
  const middle = y + width / 2;
  const markRoom = roomFor(mark, height, bold);
  const center = x + length / 2;
  const small = heightThatFits(size, deep(SMALL), room - markRoom - BETWEEN);
  if (small === undefined) {
    const under = width / scale >= LINE_PITCH * (height + SMALL[0]) ? heightThatFits(size, SMALL, room) : undefined;
    const up = under === undefined ? 0 : (under * LINE_PITCH * scale) / 2;
    const alone = set(mark, [center, middle + up], height, { align: 'center', bold });
    if (under === undefined) return [alone];
    const down = (height * LINE_PITCH * scale) / 2;
    return [alone, set(size, [center, middle - down], under, { align: 'center' })];
  }
  const start = center - ((markRoom + BETWEEN + roomFor(size, small)) / 2) * scale;
  return [
    set(mark, [start, middle], height, { bold }),
    set(size, [start + (markRoom + BETWEEN) * scale, middle], small, {}),
  ];
}

/** Left of a board and below it stand the running dimensions. */
const RUNNING: readonly Room[] = [
  { low: [-Infinity, -Infinity], high: [0, Infinity] },
  { low: [-Infinity, -Infinity], high: [Infinity, 0] },
];

/** What a defect is, beside it where there is room. */
export function defectWords(
  { defects }: Board,
  taken: readonly Room[],
  lines: readonly SawLine[],
  scale: number,
): Text[] {
  const rooms = [
    ...taken,
    ...RUNNING,
    ...lines.map(({ kind, at, from, to }): Room => {
      return kind === 'rip' ? { low: [from, at], high: [to, at] } : { low: [at, from], high: [at, to] };
    }),
  ];
  return defects.flatMap(({ what, from, to, near, far }) => {
    const middle = (near + far) / 2;
    const set = (at: Pt, align: 'left' | 'center' | 'right'): Text => ({
      kind: 'text',
      layer: LAYERS.TEXT,
      text: what,
      at,
      height: SMALL[1],
      valign: 'middle',
      align,
    });
    const off = BETWEEN * scale;
    const found = freePlace(
      [
        set([to + off / 2, middle], 'left'),
        set([from - off / 2, middle], 'right'),
        set([(from + to) / 2, far + off], 'center'),
        set([(from + to) / 2, near - off], 'center'),
      ],
      rooms,
      scale,
    );
    return found ? [found] : [];
  });
}
