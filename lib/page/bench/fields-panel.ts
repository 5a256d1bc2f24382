import { describeParams } from '../../params/describe-params.ts';
import type { EffectiveRange } from '../../params/effective-range.ts';
import type { Spec } from '../../params/spec.ts';
import { el, setAttribute, setText } from './dom.ts';
import type { Field, FieldHands, FieldState } from './field.ts';
import { makeField } from './make-field.ts';
import type { Panel, View } from './view.ts';

export interface FieldsPanel extends Panel {
  /** Opens the group of a field and puts the focus on it. */
  goTo(path: string): void;
  has(path: string): boolean;
  /** Shows what limits the other values leave, in the groups that are open. */
  limit(rangeOf: (path: string) => EffectiveRange | undefined): void;
  /** Headings of the groups that are open. */
  open(): readonly string[];
}

export interface FieldsHands {
  readonly fieldHands: (path: string) => FieldHands;
  readonly stateOf: (path: string, view: View) => FieldState;
  /** A group was opened. */
  readonly opened: () => void;
}

/** Every parameter as a field, in the order of the parameter table, under the headings of its groups. */
export function fieldsPanel(spec: Spec, opened: readonly string[], hands: FieldsHands): FieldsPanel {
  const fields = new Map<string, Field>();
  const groups: Group[] = [];
  for (const row of describeParams(spec)) {
    const field = makeField(spec.table.get(row.path)!, row, hands.fieldHands(row.path));
    fields.set(row.path, field);
    const heading = row.groups.join(', ') || 'Values';
    const known = groups.at(-1)?.heading === heading ? groups.at(-1)! : undefined;
    const group = known ?? makeGroup(heading, opened.includes(heading), hands.opened);
    if (!known) groups.push(group);
    group.paths.push(row.path);
    group.inner.append(field.element);
  }
  const groupOf = (path: string): Group | undefined => groups.find(({ paths }) => paths.includes(path));
  return {
    element: el(
      'section',
      { class: 'fields', 'aria-labelledby': 'fields' },
      el('h2', { id: 'fields' }, 'Values'),
      ...groups.map(({ element }) => element),
    ),
    has: (path) => fields.has(path),
    open: () => groups.filter(({ element }) => element.open).map(({ heading }) => heading),
    goTo(path) {
      const group = groupOf(path);
      if (!group) return;
      group.element.open = true;
      fields.get(path)!.element.scrollIntoView({ block: 'center' });
      fields.get(path)!.input.focus();
    },
    limit(rangeOf) {
      for (const { element, paths } of groups) {
        if (element.open) for (const path of paths) fields.get(path)!.limit(rangeOf(path));
      }
    },
    update(view) {
      for (const group of groups) {
        const states = group.paths.map((path) => [path, hands.stateOf(path, view)] as const);
        for (const [path, state] of states) fields.get(path)!.update(state);
        noteOn(
          group,
          states.map(([, state]) => state),
        );
      }
    },
  };
}

interface Group {
  readonly heading: string;
  readonly element: HTMLDetailsElement;
  readonly inner: HTMLElement;
  readonly note: HTMLElement;
  readonly paths: string[];
}

function makeGroup(heading: string, open: boolean, opened: () => void): Group {
  const note = el('span', { class: 'note' });
  const inner = el('fieldset', {}, el('legend', { class: 'spoken' }, heading));
  const element = el(
    'details',
    { class: 'group', open },
    el('summary', {}, el('span', { class: 'heading' }, heading), note),
    inner,
  );
  element.addEventListener('toggle', () => element.open && opened());
  return { heading, element, inner, note, paths: [] };
}

/** What is in a group, for whoever has it closed. */
function noteOn({ note, element }: Group, states: readonly FieldState[]): void {
  const wrong = states.filter(({ problems }) => problems.length > 0).length;
  const changed = states.filter(({ was }) => was !== undefined).length;
  const texts = [wrong > 0 && `${wrong} wrong`, changed > 0 && `${changed} changed`].filter(Boolean);
  setText(note, texts.join(', '));
  setAttribute(element, 'data-wrong', wrong > 0);
}
