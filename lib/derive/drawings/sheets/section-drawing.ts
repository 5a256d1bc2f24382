import { baseline } from '../../../drawing/baseline.ts';
import { type Block, block } from '../../../drawing/block.ts';
import { chain } from '../../../drawing/chain.ts';
import type { Dim, Linear } from '../../../drawing/dim.ts';
import type { Entity } from '../../../drawing/drawing.ts';
import type { Pt } from '../../../drawing/entity.ts';
import { roomFor } from '../../../drawing/fit-text.ts';
import { HATCH, type HatchLook, hatch } from '../../../drawing/hatch.ts';
import type { Layer } from '../../../drawing/layer.ts';
import { LAYERS } from '../../../drawing/layers.ts';
import { levelAt, levelDim, type Stack } from '../../../drawing/stack.ts';
import type { LengthLook, Style } from '../../../drawing/style.ts';
import { formatInches, formatMm } from '../../../units/format-length.ts';
import type { Mm } from '../../../units/mm.ts';
import { clipLoop } from '../clip-loop.ts';
import type { CutFace } from '../section-view.ts';
import type { HalfTop, TopSlot } from './half-top.ts';
import { profileTable } from './profile-table.ts';
import { sayDim } from './say-length.ts';
import { marksHeight, stripMarks } from './strip-marks.ts';

/** A cut piece of the half that is drawn, its border in mm: outwards from the center line, up from the show face. */
export interface HalfCut extends CutFace {
  /** Neighbors have different hatches; tenons one of their own. */
  readonly look: 'left' | 'right' | 'tenon';
}

/** Neighbors slant to either hand (ISO 128-50, from memory); closer lines for tenons are our convention. */
const LOOKS: { readonly [L in HalfCut['look']]: HatchLook } = {
  left: HATCH,
  right: { ...HATCH, angle: 135 },
  tenon: { angle: 45, spacing: 1 },
};

/** Joints from the center line, each on a line of its own, or in a chain. */
export type SeamRows = 'each' | 'chain';

/** What is shown beyond the center line, paper mm; our convention. */
const BEYOND: Mm = 6;

/** Nearer to a joint than this the text of a cover has no room, paper mm; our convention. */
const NARROW: Mm = 4.5;

/** The section of one half with its dimensions, and a table under it. The center line at the show face is the origin. */
export function sectionDrawing(half: HalfTop, cuts: readonly HalfCut[], rows: SeamRows, style: Style): Block {
  const { scale } = style;
  const least = -BEYOND * scale;
  const wood = cuts.flatMap((cut) => cutEntities(cut, least, style));
  const dims = [...coverDims(half, style), ...sizeDims(half, least, rows, style)];
  const marks = half.strips.flatMap((strip) =>
    stripMarks(strip, half.slots.at(-1) && coverAt(half.slots.at(-1)!, style), style),
  );
  const around = [centerLine(half, style), breakLine(half, least, style)];
  const drawn = block([...wood, ...dims, ...marks, ...around], style);
  const below = block([...wood, ...dims], style).box.min[1];
  return block([...drawn.entities, ...table(half, below, style).entities], style);
}

/** One cut piece: its hatch, and its border but for where the drawing is broken off. */
function cutEntities({ look, loops }: HalfCut, least: Mm, style: Style): Entity[] {
  const clipped = loops.map((loop) => clipLoop(loop, least)).filter((loop) => loop.length > 2);
  const layer = look === 'tenon' ? LAYERS.TENON : LAYERS.SECTION;
  return [...hatch(clipped, style, LOOKS[look]), ...clipped.flatMap((loop) => openBorder(loop, least, layer))];
}

/** A border without its sides along an upright line. */
function openBorder(loop: readonly Pt[], least: Mm, layer: Layer): Entity[] {
  const n = loop.length;
  const isCut = (k: number): boolean => loop[k]![0] <= least && loop[(k + 1) % n]![0] <= least;
  const start = loop.findIndex((_, k) => isCut(k));
  if (start < 0) return [{ kind: 'poly', layer, points: loop, closed: true }];
  const runs: Pt[][] = [];
  let run: Pt[] = [];
  for (let k = 1; k <= n; k++) {
    const at = (start + k) % n;
    run.push(loop[at]!);
    if (!isCut(at)) continue;
    if (run.length > 1) runs.push(run);
    run = [];
  }
  return runs.map((points): Entity => ({ kind: 'poly', layer, points, closed: false }));
}

/** Where the drawing is broken off beyond the center line. */
function breakLine({ columns }: HalfTop, x: Mm, { scale }: Style): Entity {
  const low = -columns[0]!.thickness - 3 * scale;
  const middle = low / 2;
  return {
    kind: 'poly',
    layer: LAYERS.TEXT,
    closed: false,
    points: [
      [x, 3 * scale],
      [x, middle + 2.5 * scale],
      [x - 2 * scale, middle + scale],
      [x + 2 * scale, middle - scale],
      [x, middle - 2.5 * scale],
      [x, low],
    ],
  };
}

/** Wood over the outermost slot, which all slots share, and under the far corner of every slot. */
function coverDims({ slots }: HalfTop, style: Style): Dim[] {
  const outermost = slots.at(-1);
  return [...(outermost ? overDim(outermost, style) : []), ...slots.flatMap((slot) => underDim(slot, style))];
}

/** A cover that no rule shows has no room for arrowheads: the note on findings says what is wrong, mm. */
const NOTHING: Mm = 0.05;

function overDim(slot: TopSlot, style: Style): Dim[] {
  if (slot.upper < NOTHING) return [];
  return [{ ...coverLine(slot, -slot.upper, 0, slot.upper, style), placement: { text: 'after' } }];
}

/** Its text stands below the wood; a slot that comes out of the underside has less than no cover. */
function underDim(slot: TopSlot, style: Style): Dim[] {
  const { lower, cover } = slot;
  if (Math.abs(cover) < NOTHING) return [];
  const [from, to] = [-lower, -lower - cover];
  return [{ ...coverLine(slot, from, to, cover, style), placement: { text: cover > 0 ? 'after' : 'before' } }];
}

/** Where the covers of a slot are lettered: upright at its far end, clear of the lines of its joint. */
const coverAt = ({ far, seam }: TopSlot, { scale }: Style): Mm => Math.max(far, seam + NARROW * scale);

/** Rounded down. */
const coverLine = (slot: TopSlot, from: Mm, to: Mm, cover: Mm, style: Style): Linear => ({
  ...levelDim([slot.far, from], [slot.far, to], 'right', coverAt(slot, style)),
  text: sayDim(cover, style.lengths, 'down'),
});

/** Joints and edge from the center line above, thickness at both ends. */
function sizeDims({ columns, slots, strips }: HalfTop, least: Mm, rows: SeamRows, style: Style): Dim[] {
  const { scale } = style;
  const seams = columns.filter(({ seam, out }) => seam && out > 0);
  const [first, last] = [columns[0]!, columns.at(-1)!];
  const over = Math.max(
    slots.length > 0 ? outerRoom(style) : 0,
    marksHeight(strips, style) - style.firstSpacing * scale,
  );
  const points = seams.map(({ out }): Pt => [out, 0]);
  const upright = (thickness: Mm, x: Mm, at: Mm): Linear => ({
    ...levelDim([x, -thickness], [x, 0], 'right', at),
    text: sayDim(thickness, style.lengths, 'up'),
  });
  return [
    ...(rows === 'each' ? baseline(points, [0, 0], 'above', style, { edge: over }) : chained(points, over, style)).dims,
    {
      ...levelDim([least, 0], [0, -first.thickness], 'left', least - style.firstSpacing * scale),
      text: sayDim(first.thickness, style.lengths, 'up'),
    },
    upright(last.thickness, last.out, last.out + style.firstSpacing * scale),
  ];
}

/** Joint to joint on one line, and the whole over it: lower, where a paper has no room for a line each. */
function chained(points: readonly Pt[], edge: Mm, style: Style): Stack {
  const links = chain([[0, 0], ...points], 'above', style, { edge });
  if (points.length < 2) return links;
  const at = levelAt('above', edge, links.levels, style);
  return { dims: [...links.dims, levelDim([0, 0], points.at(-1)!, 'above', at)], levels: links.levels + 1 };
}

/** How far the text of a cover reaches over the show face, model mm: arrowhead, text and gaps. */
function outerRoom({ scale, textHeight, textGap, arrowLength, lengths }: Style): Mm {
  const longest = lengths.system === 'both' ? '10 10/10" (100.1)' : '10 10/10"';
  return (roomFor(longest, textHeight) + 2 * textGap + arrowLength) * scale;
}

function centerLine({ columns }: HalfTop, { scale }: Style): Entity {
  const past = 4 * scale;
  return {
    kind: 'poly',
    layer: LAYERS.CENTER,
    points: [
      [0, -columns[0]!.thickness - past],
      [0, past],
    ],
    closed: false,
  };
}

/** Thickness and height over the floor in both systems, since taper is where they get mixed up; those of the design first. */
function table({ columns, slots }: HalfTop, below: Mm, style: Style): Block {
  const metric = style.lengths.system === 'mm';
  const ordered = <T>(inches: T, mm: T): T[] => (metric ? [mm, inches] : [inches, mm]);
  const rows = columns
    .filter(({ seam, out }) => seam || !slots.some((slot) => isUnder(slot, out, style)))
    .map(({ name, out, thickness, underside, designed }) => ({
      x: out,
      y: -thickness,
      cells: [
        name === 'station' ? `at ${sayDim(out, single(style.lengths))}` : name,
        ...ordered(formatInches(thickness, { rounding: 'up', mark: '"' }), formatMm(thickness, 1, 'up', '')),
        ...(designed === undefined
          ? []
          : ordered(formatInches(designed, { mark: '"' }), formatMm(designed, 1, 'nearest', ''))),
        ...ordered(formatInches(underside, { rounding: 'down', mark: '"' }), formatMm(underside, 1, 'down', '')),
      ],
    }));
  const heads = [
    '',
    ...ordered('thickness, in', 'thickness, mm'),
    ...(columns[0]!.designed === undefined ? [] : ordered('as designed, in', 'as designed, mm')),
    ...ordered('over the floor, in', 'over the floor, mm'),
  ];
  return profileTable(heads, rows, below - 2 * style.scale, style);
}

/** The line of a station would run through the text of a cover. */
const isUnder = ({ far }: TopSlot, out: Mm, { scale }: Style): boolean =>
  out > far - NARROW * scale && out < far + 2 * scale;

/** Inches alone where both are lettered. */
const single = (look: LengthLook): LengthLook => (look.system === 'both' ? { ...look, system: 'in' } : look);
