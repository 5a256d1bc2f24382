import { el, onlyWhenNew } from './dom.ts';
import { type KeySize, keySizes } from './key-sizes.ts';
import type { Panel } from './view.ts';

/** The numbers of the piece, those that moved with what they were. */
export function sizesPanel(): Panel {
  const body = el('tbody');
  const fill = onlyWhenNew(
    ({ now, before }: { readonly now: readonly KeySize[]; readonly before: readonly KeySize[] }) => {
      const old = new Map(before.map(({ name, text }) => [name, text]));
      body.replaceChildren(
        ...now.map(({ name, text }) => {
          const was = old.get(name);
          const moved = before.length > 0 && was !== text;
          return el(
            'tr',
            moved ? { class: 'moved' } : {},
            el('th', { scope: 'row' }, name),
            el('td', {}, text, moved && el('span', { class: 'was' }, was === undefined ? ' new' : ` was ${was}`)),
          );
        }),
      );
    },
  );
  return {
    element: el(
      'section',
      { class: 'sizes', 'aria-labelledby': 'sizes' },
      el('h2', { id: 'sizes' }, 'Sizes and weight'),
      el('table', {}, body),
    ),
    update({ piece, mark, units }) {
      if (piece) fill({ now: keySizes(piece, units), before: mark ? keySizes(mark.piece, units) : [] });
    },
  };
}
