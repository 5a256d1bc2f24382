import type { Mark } from '../../../drawing/entity.ts';
import { roomFor } from '../../../drawing/fit-text.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import { textMark } from '../../../drawing/print-sheet.ts';
import type { Vec2 } from '../../../geometry/vec.ts';
import type { UnitSystem } from '../../../units/format-length.ts';
import type { Mm } from '../../../units/mm.ts';
import { lengthText } from '../../templates/length-text.ts';
import type { StickSlot, StoryStick } from './story-stick.ts';
import { LATH } from './story-stick-drawing.ts';

/** Zones of a strip from its lower edge: long slots, figures, tight slots; mm; our convention. */
const LONG: Vec2 = [0, 13];
const TIGHT: Vec2 = [19, LATH];

/** Height of letters, and of a figure above the lower edge of the strip; mm; our convention. */
const LETTERS: Mm = 2.8;
const FIGURES: Mm = (LONG[1] + TIGHT[0] - LETTERS) / 2;

/** From a line to what is lettered beside it, mm; our convention. */
const BESIDE: Mm = 1.5;

/** The figure of a slot: its number and how far its middle is from the reference end. */
const figure = (slot: StickSlot, k: number, units: UnitSystem): string => `${k + 1}: ${lengthText(slot.middle, units)}`;

/** What must not be cut by a seam: every slot with its figure; mm from the reference end. */
export const slotRooms = ({ slots }: StoryStick, units: UnitSystem): readonly Vec2[] =>
  slots.map((slot, k) => [
    Math.min(slot.tight[0], slot.long[0]),
    Math.max(slot.tight[1], slot.long[1], slot.middle + BESIDE + roomFor(figure(slot, k, units), LETTERS)),
  ]);

/**
 * A stick at full size, to be glued on a lath. The reference end is at x = 0, the lower edge at y = 0.
 *
 * ```
 *   32 +--------[ tight ]------
 *      |            |
 *      | reference  | 1: 4"
 *      |            |
 *    0 +--------[ long  ]------
 * ```
 */
export function stickStrip(stick: StoryStick, units: UnitSystem): readonly Mark[] {
  const { length, slots } = stick;
  const rooms = slotRooms(stick, units);
  const line = (layer: Mark['layer'], ...points: (readonly [Mm, Mm])[]): Mark => ({
    kind: 'poly',
    layer,
    points,
    closed: false,
  });
  const words = (text: string, x: Mm, align: 'left' | 'right'): Mark[] => {
    const width = roomFor(text, LETTERS);
    const [from, to] = align === 'left' ? [x, x + width] : [x - width, x];
    return rooms.some(([a, b]) => a < to && b > from) ? [] : [textMark(text, [x, FIGURES], LETTERS, { align })];
  };
  return [
    line(LAYERS.GAUGE, [0, 0], [length, 0]),
    line(LAYERS.GAUGE, [0, LATH], [length, LATH]),
    line(LAYERS.OUTLINE, [0, 0], [0, LATH]),
    line(LAYERS.OUTLINE, [length, 0], [length, LATH]),
    ...words('reference end', 2 * BESIDE, 'left'),
    ...words('far end', length - 2 * BESIDE, 'right'),
    ...slots.flatMap((slot, k): Mark[] => [
      line(LAYERS.GAUGE, [slot.middle, 0], [slot.middle, LATH]),
      textMark(figure(slot, k, units), [slot.middle + BESIDE, FIGURES], LETTERS, { bold: true }),
      ...slotMarks(slot, 'tight', TIGHT),
      ...slotMarks(slot, 'long', LONG),
    ]),
  ];
}

/** A box over one zone, its ends at the ends of the slot, and its name. */
function slotMarks(slot: StickSlot, side: 'tight' | 'long', [low, high]: Vec2): Mark[] {
  const [from, to] = slot[side];
  const box: Mark = {
    kind: 'poly',
    layer: LAYERS.GAUGE,
    points: [
      [from, low],
      [to, low],
      [to, high],
      [from, high],
    ],
    closed: true,
  };
  const fits = slot.middle + BESIDE + roomFor(side, LETTERS) < to;
  const at = [slot.middle + BESIDE, (low + high - LETTERS) / 2] as const;
  return [box, ...(fits ? [textMark(side, at, LETTERS)] : [])];
}
