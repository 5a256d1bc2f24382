import type { Entity } from '../../drawing/drawing.ts';
import type { Poly, Pt, Text } from '../../drawing/entity.ts';
import { hatch } from '../../drawing/hatch.ts';
import type { Layer } from '../../drawing/layer.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { type Style, sizes } from '../../drawing/style.ts';
import { textCorners } from '../../drawing/text-size.ts';
import type { Board } from '../../model/records.ts';
import { formatLength, type UnitSystem } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import type { StripPlace, StripPlan } from '../lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../lumber/strip-plan/strip-problem.ts';
import { defectPatches, type Patch } from './strip-plan-boards.ts';

/** Darkest tone that still counts as light, and lightest that counts as dark (our convention). */
const LIGHT = 0.35;
const DARK = 0.65;

const toneWord = ({ tone }: Board): string => {
  if (tone === undefined) return '';
  if (tone < LIGHT) return ', light';
  return tone > DARK ? ', dark' : '';
};

const loop = (layer: Layer, points: readonly Pt[]): Poly => ({ kind: 'poly', layer, points, closed: true });

const corners = ({ along: [a, b], across: [c, d] }: Pick<Patch, 'along' | 'across'>): Pt[] => [
  [a, -c],
  [b, -c],
  [b, -d],
  [a, -d],
];

/**
 * The top from above, reference end at the left: strips with their boards, defects that show hatched and those below
 * dashed, and the triangle that tells a turned board. The origin is on the center line at the reference end.
 */
export function stripPlanView({ strips }: StripPlan, problem: StripProblem, style: Style, units: UnitSystem): Entity[] {
  const { length, boards } = problem;
  const board = (mark: string): Board => boards.find((b) => b.mark === mark)!;
  const { text } = sizes(style);
  const patchesOf = (s: StripPlace): Patch[] => defectPatches(board(s.show.mark), s.show, s, problem);
  const label = (strip: StripPlace, k: number): Entity => {
    const { show, bottom, from, to, ripWidth } = strip;
    const say = (mm: Mm): string => formatLength(mm, units, 'nearest');
    const under = bottom ? ` over board ${bottom.mark} (${bottom.faceUp} up)` : '';
    const end = show.turned ? ', far end first' : '';
    const words = `${k + 1}: board ${show.mark}, ${show.faceUp} up${end}, rip to ${say(ripWidth)}, top begins at ${say(show.startsAt)}${toneWord(board(show.mark))}${under}`;
    const lettered = ([share, shift]: readonly [number, number]): Text => {
      const at: Pt = [length * share, -(from + to) / 2 + shift * (to - from)];
      return { kind: 'text', layer: LAYERS.TEXT, text: words, at, height: style.textHeight, valign: 'middle' };
    };
    const own = patchesOf(strip);
    const clear = LABEL_AT.find((spot) => !own.some((patch) => isOver(lettered(spot), patch, style)));
    return lettered(clear ?? LABEL_AT[0]!);
  };
  const [left, right] = [-strips[0]!.from, -strips.at(-1)!.to];
  const triangle: readonly Pt[] = [
    [length * 0.04, left - text],
    [length * 0.3, left - text],
    [length * 0.17, right + text],
  ];
  return [
    ...strips.map((s) => loop(LAYERS.OUTLINE, corners({ along: [0, length], across: [s.from, s.to] }))),
    loop(LAYERS.REFERENCE, triangle),
    ...strips.flatMap(patchesOf).flatMap((patch) => patchMarks(patch, style)),
    ...strips.map(label),
    {
      kind: 'text',
      layer: LAYERS.TEXT,
      text: 'reference end',
      at: [-text, 0],
      height: style.textHeight,
      rotation: 90,
      align: 'center',
    },
  ];
}

/**
 * Where the words of a strip may begin, as parts of length and width: right of the triangle, the first that is clear;
 * our convention.
 */
const LABEL_AT: readonly (readonly [number, number])[] = [0, 0.26, -0.26].flatMap((shift) =>
  [0.31, 0.36, 0.42, 0.5].map((share) => [share, shift] as const),
);

function isOver(text: Text, { along: [start, end], across: [left, right] }: Patch, style: Style): boolean {
  const box = textCorners(text, style.scale);
  const [xs, ys] = [box.map(([x]) => x), box.map(([, y]) => y)];
  const gap = sizes(style).textGap;
  if (Math.min(...xs) - gap > end || Math.max(...xs) + gap < start) return false;
  return Math.min(...ys) - gap < -left && Math.max(...ys) + gap > -right;
}

function patchMarks(patch: Patch, style: Style): Entity[] {
  const border = corners(patch);
  return patch.shows ? [loop(LAYERS.OUTLINE, border), ...hatch([border], style)] : [loop(LAYERS.HIDDEN, border)];
}
