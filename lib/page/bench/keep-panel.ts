import type { Bench } from './bench.ts';
import { button, el, setText } from './dom.ts';
import type { Edits } from './edits.ts';
import { asOptions, asValues } from './keep.ts';
import type { Panel } from './view.ts';

/** Ways to take along what was found here. */
export function keepPanel(bench: Bench): Panel {
  let edits: Edits = new Map();
  const options = el('textarea', { readonly: true, rows: 3, 'aria-label': 'the values as options', spellcheck: false });
  const said = el('p', { class: 'said', role: 'status' });
  const copy = button('copy as --set', () => {
    void copyText(options).then((done) => {
      setText(said, done ? 'copied; it goes behind any command' : 'marked; copy it with Ctrl+C');
    });
  });
  const download = button('download design values', () => {
    const text = `${JSON.stringify(asValues(bench, edits), null, 2)}\n`;
    save('values.json', text);
    setText(said, 'values.json goes behind --params, or into the values of the design file');
  });
  return {
    element: el(
      'section',
      { class: 'keep', 'aria-labelledby': 'keep' },
      el('h2', { id: 'keep' }, 'Keep what you found'),
      options,
      el('p', { class: 'buttons' }, copy, download),
      said,
    ),
    update(view) {
      if (view.edits === edits && options.value !== '') return;
      edits = view.edits;
      options.value = asOptions(bench.design.params, edits) || 'nothing differs from the design';
      copy.disabled = edits.size === 0;
      setText(said, '');
    },
  };
}

/** Copies a text; where the browser refuses, marks it, so that it can be copied by hand. */
async function copyText(area: HTMLTextAreaElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(area.value);
    return true;
  } catch {
    area.select();
    return false;
  }
}

function save(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  el('a', { href: url, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
