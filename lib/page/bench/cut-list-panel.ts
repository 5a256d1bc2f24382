import { cutListTable } from '../../build/cut-list-table.ts';
import { el, onlyWhenNew } from './dom.ts';
import type { Panel } from './view.ts';

interface Shown {
  readonly heads: readonly { readonly head: string; readonly align?: string }[];
  readonly rows: readonly (readonly string[])[];
  readonly before: readonly (readonly string[])[] | undefined;
}

/** The cut list as the papers have it; a cell that moved tells what it was. */
export function cutListPanel(): Panel {
  const head = el('tr');
  const body = el('tbody');
  const fill = onlyWhenNew(({ heads, rows, before }: Shown) => {
    head.replaceChildren(...heads.map(({ head: text, align }) => el('th', { scope: 'col', class: align }, text)));
    body.replaceChildren(...rows.map((cells, k) => rowOf(cells, heads, before && oldRow(cells, k, before))));
  });
  return {
    element: el(
      'section',
      { class: 'cut-list', 'aria-labelledby': 'cut-list' },
      el('h2', { id: 'cut-list' }, 'Cut list'),
      el(
        'div',
        { class: 'wide', role: 'region', tabindex: 0, 'aria-labelledby': 'cut-list' },
        el('table', {}, el('thead', {}, head), body),
      ),
    ),
    update({ piece, mark, units }) {
      if (!piece) return;
      const { columns, rows } = cutListTable(piece.cutList(), units);
      const before = mark && mark.piece !== piece ? cutListTable(mark.piece.cutList(), units).rows : undefined;
      fill({ heads: columns, rows, before });
    },
  };
}

function rowOf(cells: readonly string[], heads: Shown['heads'], before: readonly string[] | undefined): HTMLElement {
  return el(
    'tr',
    {},
    ...cells.map((text, k) => {
      const was = before === undefined || before[k] === text ? undefined : (before[k] ?? 'new');
      const kind = [heads[k]?.align, was === undefined ? '' : 'moved'].filter(Boolean).join(' ');
      const inside = [
        text,
        was !== undefined && el('span', { class: 'was' }, was === 'new' ? ' new' : ` was ${was || 'none'}`),
      ];
      const attributes = { class: kind || undefined };
      return k === 0 ? el('th', { scope: 'row', ...attributes }, ...inside) : el('td', attributes, ...inside);
    }),
  );
}

/** The row of the same marks; an empty one when there was none. */
function oldRow(cells: readonly string[], at: number, before: readonly (readonly string[])[]): readonly string[] {
  const same = before.find((row) => row[0] === cells[0]);
  const beside = before[at];
  return same ?? (beside && beside[1] === cells[1] ? beside : ['new']);
}
