import type { Drawing, Entity } from '../../drawing/drawing.ts';
import { LAYERS } from '../../drawing/layers.ts';
import { move } from '../../drawing/move.ts';
import { DEFAULT_STYLE, type Style, sizes } from '../../drawing/style.ts';
import { formatLength, type UnitSystem } from '../../units/format-length.ts';
import type { StripPlan } from '../lumber/strip-plan/strip-plan.ts';
import type { StripProblem } from '../lumber/strip-plan/strip-problem.ts';
import { stripPlanRips } from './strip-plan-rips.ts';
import { ENLARGED, stripPlanSection } from './strip-plan-section.ts';
import { stripPlanView } from './strip-plan-view.ts';

export interface StripPlanHeading {
  readonly title: string;
  readonly revision: string;
  readonly date: string;
  readonly units: UnitSystem;
  /** How good the plan is, in words. */
  readonly bound: string;
  /** What to set in the design, so that it is drawn and checked with the joints of the plan. */
  readonly redraw: string;
  readonly warning?: string;
}

/** Model mm in one paper mm; our convention. */
const SCALE = 10;

/** The strip plan to hang over the bench: the top from above, and the stack of blanks over the wedge. */
export function stripPlanDrawing(plan: StripPlan, problem: StripProblem, heading: StripPlanHeading): Drawing {
  const { title, revision, date, units, bound, redraw, warning } = heading;
  const style: Style = { ...DEFAULT_STYLE, scale: SCALE };
  const { text } = sizes(style);
  const half = Math.max(-plan.strips[0]!.from, plan.strips.at(-1)!.to);
  const least = formatLength(plan.reserve, units, 'down');
  const deepest = Math.max(...plan.strips.map((s) => s.thickness)) * ENLARGED;
  const section = stripPlanSection(plan, problem, style, units);
  const middle = -half - 7 * text;
  const lines = [
    `least thickness to spare over the wedge ${least}; ${bound}`,
    'the other sheets have the joints of the design; to draw and check with these, set',
    `  ${redraw}`,
    'the triangle is drawn on the show face: a board that is turned breaks it',
    'hatched: a defect that shows; dashed: one below; across they lie as on the board, measured from its reference edge',
    'reference edge and far edge are those of the board as measured; over the center line half comes off each, in two cuts',
    `section seen from the reference end, ${ENLARGED} times as large; growth rings bulge to the bark side`,
    'above a blank its board, below it the thickness to spare over the finished wedge (dash-dot)',
  ];
  const letter = (words: string, y: number, height: number, layer = LAYERS.TEXT as Entity['layer']): Entity => ({
    kind: 'text',
    layer,
    text: words,
    at: [0, y],
    height,
  });
  const entities: Entity[] = [
    letter(`${title}: strip plan, revision ${revision}, ${date}`, half + (warning ? 6 : 3) * text, 3.5),
    ...(warning === undefined ? [] : [letter(warning, half + 3 * text, style.textHeight, LAYERS.WARNING)]),
    ...stripPlanView(plan, problem, style, units),
    ...stripPlanRips(plan, problem.length, style, units),
    ...section.map((entity) => move(entity, [Math.max(problem.length / 2, half * ENLARGED), middle])),
    ...lines.map((line, k) => letter(line, middle - deepest - (6 + 2 * k) * text, style.textHeight)),
  ];
  return { title: `${title}: strip plan`, style, entities };
}
