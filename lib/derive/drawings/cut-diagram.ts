import type { Entity } from '../../drawing/drawing.ts';
import type { Poly, Pt, Solid, Text } from '../../drawing/entity.ts';
import { heightThatFits, roomFor } from '../../drawing/fit-text.ts';
import { hatch } from '../../drawing/hatch.ts';
import type { Layer } from '../../drawing/layer.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { DEFAULT_STYLE } from '../../drawing/style.ts';
import type { Board } from '../../model/records.ts';
import type { Mm } from '../../units/mm.ts';
import type { BoardPlan, Place } from '../lumber/cut-plan/cut-plan.ts';
import { CUT, WOOD } from './cut-diagram-layers.ts';
import { cutNumbers } from './cut-numbers.ts';
import { freePlace, type Room, roomOf } from './free-place.ts';
import { type Running, runningDims } from './running-dims.ts';
import { type SawLine, sawLines } from './saw-lines.ts';

/** A board to be cut up. */
export interface CutBoardView {
  readonly board: Board;
  readonly plan: BoardPlan;
  /** mm, what a cut takes. */
  readonly kerf: Mm;
}

export interface CutDiagramLook {
  /** Model mm in one paper mm. */
  readonly scale: number;
  /** A length as it is lettered. */
  readonly say: (mm: Mm) => string;
}

/** Heights of lettering in a part or an offcut, paper mm: the first that fits. */
const MARKS = [3, 2.5, 2, 1.6] as const;
const SMALL = [1.8, 1.5] as const;

/** Paper mm between mark and size of a part, and left free at the ends of either. */
const BETWEEN = 1.5;

/** Lines of a defect: closer than those of a section. */
const DEFECT_LINES = { angle: 45, spacing: 0.9 } as const;

/**
 * One board as it lies on the bench, reference end at x = 0, reference edge at y = 0: parts in the color of wood with mark
 * and size, defects hatched, every saw cut with its number in the order of the saw, and where the near side of the blade
 * runs, counted from the reference end (below) and the reference edge (left).
 */
export function cutDiagram({ board, plan, kerf }: CutBoardView, look: CutDiagramLook): Entity[] {
  const { scale, say } = look;
  const lines = sawLines(plan, board, kerf);
  const lettered = [
    ...plan.placed.flatMap((place) => partWords(place, place.part, say, scale)),
    ...plan.offcuts.flatMap((place) => partWords(place, `keep ${place.name}`, say, scale, false)),
  ];
  const defects = board.defects.map(({ from, to, near, far }) => corners(from, near, to - from, far - near));
  const taken = [...lettered.map((text) => roomOf(text, scale)), ...defects.map(roomOfCorners)];
  const named = defectWords(board, taken, lines, scale);
  const numbers = cutNumbers(lines, { ...board, kerf, scale }, [...taken, ...named.map((text) => roomOf(text, scale))]);
  return [
    ...plan.placed.map((place) => area(place)),
    ...hatched(defects, scale),
    ...defects.map((points) => outline(points, LAYERS.HATCH)),
    ...lines.map((line) => cutLine(line, kerf)),
    outline(corners(0, 0, board.length, board.width), LAYERS.OUTLINE),
    ...lettered,
    ...named,
    ...numbers,
    ...runningDims(running(lines, 'crosscut', board.length, say), 'below', scale),
    ...runningDims(running(lines, 'rip', board.width, say), 'left', scale),
  ];
}

/** What is written along one side: cuts at one place together, with their numbers; last the size of the board. */
export function running(
  lines: readonly SawLine[],
  kind: SawLine['kind'],
  whole: Mm,
  say: (mm: Mm) => string,
): Running[] {
  const places = new Map<number, number[]>();
  for (const line of lines.filter((l) => l.kind === kind)) {
    places.set(line.at, [...(places.get(line.at) ?? []), line.number]);
  }
  const cuts = [...places].sort(([a], [b]) => a - b);
  return [
    ...cuts.map(([at, numbers]) => ({ at, text: `${say(at)} (${spans(numbers)})` })),
    { at: whole, text: say(whole) },
  ];
}

/** Numbers in rising order as `1, 4-6`. */
function spans(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const n of numbers) {
    const last = runs.at(-1);
    if (last && n === last[1] + 1) last[1] = n;
    else runs.push([n, n]);
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : b === a + 1 ? `${a}, ${b}` : `${a}-${b}`)).join(', ');
}

type Corners = readonly [Pt, Pt, Pt, Pt];

const corners = (x: Mm, y: Mm, length: Mm, width: Mm): Corners => [
  [x, y],
  [x + length, y],
  [x + length, y + width],
  [x, y + width],
];

const roomOfCorners = ([low, , high]: Corners): Room => ({ low, high });

const outline = (points: Corners, layer: Layer): Poly => ({ kind: 'poly', layer, points, closed: true });

const area = ({ x, y, length, width }: Place): Solid => ({
  kind: 'solid',
  layer: WOOD,
  corners: corners(x, y, length, width),
});

const hatched = (loops: readonly Corners[], scale: number): Poly[] =>
  loops.flatMap((loop) => hatch([loop], { ...DEFAULT_STYLE, scale }, DEFECT_LINES));

/** A line in the middle of what the blade takes. */
function cutLine({ kind, at, from, to }: SawLine, kerf: Mm): Poly {
  const middle = at + kerf / 2;
  const points: Pt[] =
    kind === 'rip'
      ? [
          [from, middle],
          [to, middle],
        ]
      : [
          [middle, from],
          [middle, to],
        ];
  return { kind: 'poly', layer: CUT, points, closed: false };
}

/** Mark and size in the middle of a part: side by side, else the mark alone, upright where it is longer than wide. */
function partWords(place: Place, mark: string, say: (mm: Mm) => string, scale: number, bold = true): Text[] {
  const { x, y, length, width } = place;
  const deep = (heights: readonly number[]): number[] => heights.filter((h) => h * 1.7 * scale <= width);
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
  const small = heightThatFits(size, deep(SMALL), room - markRoom - BETWEEN);
  if (small === undefined) return [set(mark, [x + length / 2, middle], height, { align: 'center', bold })];
  const start = x + length / 2 - ((markRoom + BETWEEN + roomFor(size, small)) / 2) * scale;
  return [
    set(mark, [start, middle], height, { bold }),
    set(size, [start + (markRoom + BETWEEN) * scale, middle], small, {}),
  ];
}

/** What a defect is, beside it where there is room. */
function defectWords({ defects }: Board, taken: readonly Room[], lines: readonly SawLine[], scale: number): Text[] {
  const rooms = [
    ...taken,
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
