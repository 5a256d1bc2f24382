import type { StripPlan } from '../derive/lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../derive/lumber/strip-plan/strip-problem.ts';
import type { Drawing, Entity } from '../drawing/drawing.ts';
import type { Layer } from '../drawing/layer.ts';
import { LAYERS } from '../drawing/layers.ts';
import { DEFAULT_STYLE } from '../drawing/style.ts';
import type { Board, Defect } from '../model/records.ts';
import { formatLength, type UnitSystem } from '../units/format-length.ts';
import type { LumberPlan } from './lumber-plan.ts';

/** A view at 1:10. */
const SCALE = 10;

/** Model mm between one thing and the next. */
const GAP = 90;

type Box = readonly [x: number, y: number, length: number, width: number];

const box = ([x, y, length, width]: Box, layer: Layer): Entity => ({
  kind: 'poly',
  layer,
  points: [
    [x, y],
    [x + length, y],
    [x + length, y + width],
    [x, y + width],
  ],
  closed: true,
});

const words = (text: string, x: number, y: number, more: Partial<Extract<Entity, { kind: 'text' }>> = {}): Entity => ({
  kind: 'text',
  layer: LAYERS.TEXT,
  text,
  at: [x, y],
  height: 2.5,
  ...more,
});

const centered = { align: 'center', valign: 'middle' } as const;

const heading = (text: string, warning: string | undefined, y: number): Entity[] => [
  words(text, 0, y, { height: 3.5 }),
  ...(warning === undefined ? [] : [words(warning, 0, y - 50, { layer: LAYERS.WARNING })]),
];

const drawn = (title: string, entities: readonly Entity[]): Drawing => ({
  title,
  style: { ...DEFAULT_STYLE, scale: SCALE },
  entities,
});

const defectBox = (defect: Defect, x: number, y: number): Entity =>
  box([x + defect.from, y + defect.near, defect.to - defect.from, defect.far - defect.near], LAYERS.WARNING);

/** Every opened board with its parts, offcuts and defects, reference end at the left, reference edge below. */
export function cutDrawing(plan: LumberPlan, boards: readonly Board[], title: string, warning?: string): Drawing {
  const opened = plan.cuts.flatMap(({ progress }) => progress.plan?.boards ?? []);
  const entities: Entity[] = heading(`${title}: cut plan`, warning, 120);
  let y = 0;
  for (const { board, placed, offcuts, first } of opened) {
    const { length, width, defects } = boards.find(({ mark }) => mark === board)!;
    y -= width;
    entities.push(box([0, y, length, width], LAYERS.OUTLINE));
    for (const p of placed) {
      entities.push(box([p.x, y + p.y, p.length, p.width], LAYERS['SAW-LINE']));
      entities.push(words(p.part, p.x + p.length / 2, y + p.y + p.width / 2, centered));
    }
    for (const o of offcuts) {
      entities.push(box([o.x, y + o.y, o.length, o.width], LAYERS.HIDDEN));
      entities.push(words('offcut', o.x + o.length / 2, y + o.y + o.width / 2, centered));
    }
    entities.push(...defects.map((defect) => defectBox(defect, 0, y)));
    entities.push(words(`board ${board}, ${first} first`, 0, y + width + 15));
    y -= GAP;
  }
  return drawn(`${title}: cut plan`, entities);
}

/** The top from above with its strips, and the stack of boards over the wedge in section, depths five times as large. */
export function stripDrawing(
  { strips, reserve }: StripPlan,
  problem: StripProblem,
  title: string,
  units: UnitSystem,
  warning?: string,
): Drawing {
  const { length, width, centerThickness, edgeThickness } = problem;
  const half = width / 2;
  const entities: Entity[] = heading(`${title}: strip plan`, warning, half + 180);
  for (const [k, { from, to, show, bottom }] of strips.entries()) {
    entities.push(box([0, -to, length, to - from], LAYERS.OUTLINE));
    const under = bottom ? ` over ${bottom.mark}` : '';
    const lie = `${show.faceUp} up, bark ${show.barkUp ? 'up' : 'down'}${show.turned ? ', turned' : ''}`;
    entities.push(words(`${k + 1}: board ${show.mark}${under}, ${lie}`, length / 2, -(from + to) / 2, centered));
  }
  entities.push(words('reference end', -20, 0, { rotation: 90, align: 'center' }));
  entities.push(words(`left edge; least reserve ${formatLength(reserve, units, 'down')}`, 0, half + 60));
  const DEEP = 5;
  const x = length + 200 + DEEP * Math.max(...strips.map(({ thickness }) => thickness));
  const at = (across: number, depth: number): readonly [number, number] => [x - depth * DEEP, -across];
  for (const { from, to, thickness, show } of strips) {
    const points = [at(from, 0), at(to, 0), at(to, thickness), at(from, thickness)];
    entities.push({ kind: 'poly', layer: LAYERS.OUTLINE, points, closed: true });
    entities.push(words(show.mark, x + 30, -(from + to) / 2, { valign: 'middle' }));
  }
  const wedge = [at(-half, edgeThickness), at(0, centerThickness), at(half, edgeThickness)];
  entities.push({ kind: 'poly', layer: LAYERS['SAW-LINE'], points: wedge, closed: false });
  entities.push(words('section, depth x 5', x - centerThickness * DEEP, half + 60));
  return drawn(`${title}: strip plan`, entities);
}
