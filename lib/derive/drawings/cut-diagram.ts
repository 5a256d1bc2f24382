import type { Entity } from '../../drawing/drawing.ts';
import type { Poly, Pt, Solid } from '../../drawing/entity.ts';
import { hatch } from '../../drawing/hatch.ts';
import type { Layer } from '../../drawing/layer.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { DEFAULT_STYLE } from '../../drawing/style.ts';
import type { Board } from '../../model/records.ts';
import type { Mm } from '../../units/mm.ts';
import type { BoardPlan, Place } from '../lumber/cut-plan/cut-plan.ts';
import { CUT, WOOD } from './cut-diagram-layers.ts';
import { defectWords, partWords } from './cut-diagram-words.ts';
import { cutNumbers } from './cut-numbers.ts';
import { type Room, roomOf } from './free-place.ts';
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

/** Lines of a defect: closer than those of a section; our convention. */
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
  const parts = plan.placed.map(({ x, y, length, width }) => roomOfCorners(corners(x, y, length, width)));
  const named = defectWords(board, [...taken, ...parts], lines, scale);
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
function running(lines: readonly SawLine[], kind: SawLine['kind'], whole: Mm, say: (mm: Mm) => string): Running[] {
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
