import type { Param } from '../../params/param.ts';
import { el } from './dom.ts';
import type { FieldHands } from './field.ts';

/** The control of a field that holds its text. */
export interface Entry {
  readonly input: HTMLInputElement | HTMLSelectElement;
  /** Shows a text, unless someone is typing another. */
  show(text: string): void;
}

/** A box to tick, a choice, or a line to type in. */
export function entryFor(param: Param, id: string, hands: FieldHands): Entry {
  if (param.kind === 'flag') return tickEntry(id, hands);
  if (param.kind === 'choice') return choiceEntry(param.options, id, hands);
  return textEntry(id, hands);
}

function tickEntry(id: string, hands: FieldHands): Entry {
  const input = el('input', { type: 'checkbox', id });
  input.addEventListener('change', () => hands.set(input.checked ? 'yes' : 'no'));
  return {
    input,
    show(text) {
      input.checked = text.trim() === 'yes';
    },
  };
}

/** What is no option of it, given by hand elsewhere, is shown all the same. */
function choiceEntry(options: readonly string[], id: string, hands: FieldHands): Entry {
  const input = el('select', { id }, ...options.map((option) => el('option', { value: option }, option)));
  input.addEventListener('change', () => hands.set(input.value));
  return {
    input,
    show(text) {
      if (!options.includes(text) && ![...input.options].some(({ value }) => value === text)) {
        input.append(el('option', { value: text }, text));
      }
      input.value = text;
    },
  };
}

function textEntry(id: string, hands: FieldHands): Entry {
  const input = el('input', { type: 'text', id, autocomplete: 'off', spellcheck: false, autocapitalize: 'off' });
  let shown = '';
  let typing = 0;
  // While it is typed a text counts as soon as it is good; what is wrong with it is told when it is left.
  input.addEventListener('focus', () => {
    typing += 1;
  });
  input.addEventListener('input', () => hands.setIfGood(input.value, `typing ${id} ${typing}`));
  input.addEventListener('change', () => hands.set(input.value, `typing ${id} ${typing}`));
  input.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') input.value = shown;
  });
  return {
    input,
    show(text) {
      const isTyped = document.activeElement === input && input.value !== shown;
      shown = text;
      input.defaultValue = text;
      if (!isTyped) input.value = text;
    },
  };
}
