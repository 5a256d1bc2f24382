import type { Entity } from '../../drawing/drawing.ts';
import type { Poly, Pt, Text } from '../../drawing/entity.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { type Style, sizes } from '../../drawing/style.ts';
import { formatLength, type UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import type { BoardPlace, StripPlace, StripPlan } from '../lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../lumber/strip-plan/strip-problem.ts';
import { roomOf } from './free-place.ts';

/** The section is drawn so many times as large as the plan, both ways: a wedge is thin; our convention. */
export const ENLARGED = 2;

/**
 * The stack of blanks over the finished wedge, seen from the reference end, left edge at the left: growth rings, mark above
 * and spare thickness below each. The origin is on the show face at the center line.
 */
export function stripPlanSection(
  { strips }: StripPlan,
  problem: StripProblem,
  style: Style,
  units: UnitSystem,
): Entity[] {
  const { width, centerThickness, edgeThickness, settings, boards } = problem;
  const at = (across: Mm, depth: Mm): Pt => [across * ENLARGED, -depth * ENLARGED];
  // Half of what cleaning up takes is taken off the show face.
  const skin = settings.cleanUp / 2;
  const { text } = sizes(style);
  const lowest = -Math.max(...strips.map((s) => s.thickness)) * ENLARGED;
  const lettered = (words: string, across: Mm, y: number): Text => ({
    kind: 'text',
    layer: LAYERS.TEXT,
    text: words,
    at: [across * ENLARGED, y],
    height: style.textHeight,
    align: 'center',
  });
  const blank = (strip: StripPlace, place: BoardPlace, top: Mm, bottom: Mm): Entity[] => [
    {
      kind: 'poly',
      layer: LAYERS.OUTLINE,
      points: [at(strip.from, top), at(strip.to, top), at(strip.to, bottom), at(strip.from, bottom)],
      closed: true,
    },
    ...ringLines(strip, place, top, bottom, at),
  ];
  const stack = (strip: StripPlace): Entity[] => {
    const { show, bottom, thickness } = strip;
    if (!bottom) return blank(strip, show, 0, thickness);
    const first = thicknessOf(show.mark);
    return [...blank(strip, show, 0, first), ...blank(strip, bottom, first, thickness)];
  };
  const thicknessOf = (mark: string): Mm => boards.find((b) => b.mark === mark)!.thickness;
  return [
    ...strips.flatMap(stack),
    wedgeLine([at(-width / 2, skin), at(width / 2, skin)]),
    wedgeLine([
      at(-width / 2, skin + edgeThickness),
      at(0, skin + centerThickness),
      at(width / 2, skin + edgeThickness),
    ]),
    ...inTwoRows(
      strips.map((s) => lettered(marksOf(s), (s.from + s.to) / 2, text)),
      ROW * text,
      style.scale,
    ),
    ...inTwoRows(
      strips.map((s) => lettered(formatLength(s.reserve, units, 'down'), (s.from + s.to) / 2, lowest - 2 * text)),
      -ROW * text,
      style.scale,
    ),
  ];
}

const marksOf = ({ show, bottom }: StripPlace): string => (bottom ? `${show.mark} / ${bottom.mark}` : show.mark);

/** From a row of lettering to one that stands out of it, in heights of the lettering; our convention. */
const ROW = 1.5;

/** Lettering from left to right; what would run into the one before it goes a row further out. */
function inTwoRows(words: readonly Text[], out: number, scale: number): Text[] {
  const ends: [near: number, far: number] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  return words.map((word) => {
    const { low, high } = roomOf(word, scale);
    const row = low[0] >= ends[0] ? 0 : 1;
    ends[row] = high[0];
    return { ...word, at: [word.at[0], word.at[1] + row * out] };
  });
}

const wedgeLine = (points: readonly Pt[]): Poly => ({ kind: 'poly', layer: LAYERS['SAW-LINE'], points, closed: false });

/** How deep the growth rings bend, and where they lie, as parts of the thickness (ours: they only tell the direction). */
const BEND = 0.3;
const LEVELS = [0.42, 0.72];

/** Rings bulge toward the bark. */
function ringLines(
  { from, to }: StripPlace,
  { barkUp }: BoardPlace,
  top: Mm,
  bottom: Mm,
  at: (across: Mm, depth: Mm) => Pt,
): Poly[] {
  const inset = (to - from) * 0.12;
  const chord = to - from - 2 * inset;
  const thickness = bottom - top;
  // Left to right, a line that bulges upward turns clockwise, which is a negative bulge.
  const bulge = ((barkUp ? -1 : 1) * BEND * thickness) / (chord / 2);
  return LEVELS.map((level) => {
    const depth = top + thickness * (barkUp ? level : 1 - level);
    const [a, b] = [at(from + inset, depth), at(to - inset, depth)];
    return { kind: 'poly', layer: LAYERS.RULE, points: [[...a, bulge], b], closed: false };
  });
}
