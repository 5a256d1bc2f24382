import { el } from './dom.ts';

/** A sentence of the command line, its lines below each other: on a phone they are broken again. */
export const problemText = (text: string): HTMLElement =>
  el('div', { class: 'problem' }, ...text.split('\n').map((line) => el('p', {}, line.trim())));
