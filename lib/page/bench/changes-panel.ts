import type { Spec } from '../../params/spec.ts';
import { valueAt } from '../../params/values.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { type Change, changesOf, type Named } from './change.ts';
import { button, el, onlyWhenNew, refill } from './dom.ts';
import { findingsOf, isSettled } from './found.ts';
import { keySizes } from './key-sizes.ts';
import type { Piece } from './piece.ts';
import { textOf } from './read-edits.ts';
import { verdictsOf } from './verdict-changes.ts';
import type { Hands, Panel, View } from './view.ts';

interface Shown {
  readonly since: string;
  readonly isDesign: boolean;
  readonly edited: boolean;
  readonly parts: readonly { readonly title: string; readonly changes: readonly Change[] }[];
  readonly pending: boolean;
}

/** What is not as it was: values, sizes and verdicts, before and after. */
export function changesPanel(spec: Spec, hands: Hands): Panel {
  const body = el('div', { tabindex: -1 });
  const fill = onlyWhenNew(({ since, isDesign, edited, parts, pending }: Shown) => {
    const some = parts.filter(({ changes }) => changes.length > 0);
    refill(body, [
      el('p', {}, some.length > 0 ? `Since ${since}:` : `Nothing has changed since ${since}.`),
      ...some.map(({ title, changes }) => changeTable(title, changes)),
      pending && some.length > 0 && el('p', { class: 'again' }, 'verdicts follow when both are checked'),
      el(
        'p',
        { class: 'buttons' },
        button('measure changes from here', hands.markHere, { 'data-key': 'here' }),
        !isDesign && button('measure changes from the design', hands.markDesign, { 'data-key': 'design' }),
        edited && button('put the whole design back', hands.putAllBack, { 'data-key': 'back' }),
      ),
    ]);
  });
  return {
    element: el(
      'section',
      { class: 'changes', 'aria-labelledby': 'changes' },
      el('h2', { id: 'changes' }, 'What has changed'),
      body,
    ),
    update(view) {
      const shown = shownOf(spec, view);
      if (shown) fill(shown);
    },
  };
}

function shownOf(spec: Spec, { piece, mark, units, found, edits }: View): Shown | undefined {
  if (!piece) return undefined;
  const since = !mark || mark.isDesign ? 'the design' : 'you last measured';
  const edited = edits.size > 0;
  if (!mark) return { since, isDesign: true, edited, parts: [], pending: false };
  const name = (id: string): string => {
    const part = piece.assembly.parts.find((one) => one.id === id);
    return part ? `${part.name} ${part.mark}` : id;
  };
  const settled = isSettled(found) && mark.found !== undefined;
  const verdicts = settled
    ? changesOf(verdictsOf(findingsOf(mark.found!), name), verdictsOf(findingsOf(found), name))
    : [];
  return {
    since,
    isDesign: mark.isDesign,
    edited,
    pending: !settled,
    parts: [
      { title: 'values', changes: changesOf(valueTexts(spec, mark.piece, units), valueTexts(spec, piece, units)) },
      { title: 'sizes and weight', changes: changesOf(keySizes(mark.piece, units), keySizes(piece, units)) },
      { title: 'verdicts', changes: verdicts },
    ],
  };
}

const valueTexts = (spec: Spec, { values }: Piece, units: UnitSystem): Named[] =>
  [...spec.table].map(([path, param]) => ({ name: path, text: textOf(param, valueAt(values, path), units) }));

function changeTable(title: string, changes: readonly Change[]): HTMLElement {
  return el(
    'table',
    { class: 'before-after' },
    el('caption', {}, title),
    el('thead', {}, el('tr', {}, ...['what', 'before', 'after'].map((head) => el('th', { scope: 'col' }, head)))),
    el(
      'tbody',
      {},
      ...changes.map(({ name, before, after }) =>
        el('tr', {}, el('th', { scope: 'row' }, name), el('td', {}, before), el('td', { class: 'moved' }, after)),
      ),
    ),
  );
}
