import type { Table } from '../../build/cut-list-table.ts';
import { el } from './dom.ts';

/** A table as the papers have it, in a box that scrolls sideways; columns without an entry are left out. */
export function tableOf({ columns, rows }: Table, labelledBy: string): HTMLElement {
  const shown = columns.flatMap((column, k) => (rows.some((cells) => cells[k] !== '') ? [{ ...column, k }] : []));
  const head = shown.map(({ head: text, align }) => el('th', { scope: 'col', class: align }, text));
  const lines = rows.map((cells) =>
    el(
      'tr',
      {},
      ...shown.map(({ k, align }, n) =>
        n === 0 ? el('th', { scope: 'row', class: align }, cells[k]) : el('td', { class: align }, cells[k]),
      ),
    ),
  );
  return el(
    'div',
    { class: 'wide', role: 'region', tabindex: 0, 'aria-labelledby': labelledBy },
    el('table', {}, el('thead', {}, el('tr', {}, ...head)), el('tbody', {}, ...lines)),
  );
}
