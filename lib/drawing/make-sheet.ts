import { roomOf } from './block.ts';
import type { Drawing, Entity } from './drawing.ts';
import { PAPERS, type Paper, SCALES } from './paper.ts';
import type { Sheet, SheetHeading, SheetPlan } from './sheet.ts';
import { sheetFrame } from './sheet-frame.ts';
import { DEFAULT_STYLE, type LengthLook, type Style } from './style.ts';

/** Parts are read to 1/32 in (common practice, no source) or 0.1 mm (our convention). */
export const PART_LOOK: { readonly [L in LengthLook['system']]: LengthLook } = {
  in: { system: 'in', denominator: 32, rounding: 'nearest' },
  mm: { system: 'mm', decimals: 1 },
  both: { system: 'both', denominator: 32, rounding: 'nearest', decimals: 1 },
};

/**
 * A sheet at the largest scale at which its content fits on the paper of the set; where it fits at none, on the next larger
 * paper.
 *
 * @throws RangeError when it fits on none.
 */
export function makeSheet(plan: SheetPlan, heading: SheetHeading): Sheet {
  const papers = papersFrom(heading.paper);
  for (const paper of papers) {
    for (const scale of plan.scales ?? SCALES[paper.set]) {
      const sheet = atScale(plan, { ...heading, paper }, scale);
      if (sheet) return sheet;
    }
  }
  throw new RangeError(`sheet "${plan.name}" fits at no scale on ${papers.map(({ name }) => name).join(', ')}`);
}

const papersFrom = (paper: Paper): readonly Paper[] =>
  Object.values(PAPERS).filter(({ set, width }) => set === paper.set && width >= paper.width);

function atScale(plan: SheetPlan, heading: SheetHeading, scale: number): Sheet | undefined {
  const { paper, lengths, piece } = heading;
  const look = plan.look ?? ((system) => PART_LOOK[system]);
  const style: Style = { ...DEFAULT_STYLE, scale, lengths: look(lengths) };
  const { entities, area, strip } = sheetFrame(
    plan.title,
    { ...heading, lengths: style.lengths.system, unscaled: plan.unscaled ?? false },
    scale,
  );
  const content = plan.draw({ heading, style, area, strip });
  if (!content) return undefined;
  if (!isOnPaper(content, style, heading)) return undefined;
  const drawing: Drawing = { title: `${piece}, ${plan.title}`, style, entities: [...content, ...entities] };
  return { name: plan.name, title: plan.title, paper, scale, drawing };
}

/** Rounding, model mm. */
const NOISE = 1e-6;

function isOnPaper(content: readonly Entity[], style: Style, { paper }: SheetHeading): boolean {
  const { min, max } = roomOf(content, style);
  const { scale } = style;
  const { left, rest } = paper.margin;
  return (
    min[0] >= left * scale - NOISE &&
    min[1] >= rest * scale - NOISE &&
    max[0] <= (paper.width - rest) * scale + NOISE &&
    max[1] <= (paper.height - rest) * scale + NOISE
  );
}
