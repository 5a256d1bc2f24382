import type { Bench } from './bench.ts';
import { changesPanel } from './changes-panel.ts';
import { cutListPanel } from './cut-list-panel.ts';
import { el } from './dom.ts';
import type { FieldsPanel } from './fields-panel.ts';
import { findingsPanel } from './findings-panel.ts';
import { keepPanel } from './keep-panel.ts';
import { problemsPanel } from './problems-panel.ts';
import { remedyOf } from './remedy.ts';
import { sizesPanel } from './sizes-panel.ts';
import { summaryPanel } from './summary-panel.ts';
import type { Hands, Panel } from './view.ts';

/**
 * Puts the panels of the page into their places: the picture with what must stay in sight, the values, and what follows
 * from them. Answers them in the order in which they are brought up to date.
 */
export function layOut(
  into: HTMLElement,
  bench: Bench,
  hands: Hands,
  picture: Panel,
  fields: FieldsPanel,
  boards: Panel | undefined,
): readonly Panel[] {
  const { params: spec } = bench.design;
  const summary = summaryPanel(hands);
  const problems = problemsPanel(fields.has, fields.goTo);
  const findings = findingsPanel({ remedyOf: (fix) => remedyOf(spec, fix), set: hands.set });
  const sizes = sizesPanel();
  const changes = changesPanel(spec, hands);
  const keep = keepPanel(bench);
  const cutList = cutListPanel();
  const own = boards ? [boards] : [];
  into.replaceChildren(
    el('div', { class: 'sight' }, picture.element, summary.element),
    el('div', { class: 'values' }, problems.element, fields.element),
    el('div', { class: 'results' }, ...[changes, findings, sizes, ...own, cutList, keep].map(({ element }) => element)),
  );
  return [picture, summary, problems, fields, sizes, findings, changes, ...own, cutList, keep];
}
