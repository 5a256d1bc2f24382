import { VERDICTS, type Verdict } from '../../model/finding.ts';
import { formatNumber } from '../../units/format-length.ts';
import { formatMass } from '../../units/format-load.ts';
import { button, el, onlyWhenNew, setText } from './dom.ts';
import { findingsOf, pendingChecks } from './found.ts';
import { keySizes } from './key-sizes.ts';
import type { Hands, Panel, View } from './view.ts';

/** Quiet after which the summary is read out, ms: not at every step of a drag. */
const QUIET = 700;

/** What stays in sight: weight, wood, how many findings of each verdict; undo and redo; the units. */
export function summaryPanel(hands: Hands): Panel {
  const figures = el('p', { class: 'figures' });
  const verdicts = el('p', { class: 'verdicts' });
  const spoken = el('p', { class: 'spoken', role: 'status' });
  const back = button('undo', hands.undo, { title: 'undo (Ctrl+Z)' });
  const forth = button('redo', hands.redo, { title: 'redo (Ctrl+Shift+Z)' });
  const units = (['in', 'mm'] as const).map(
    (one) => [one, button(one, () => hands.setUnits(one), { 'aria-pressed': 'false' })] as const,
  );
  const say = speaker(spoken);
  const fill = onlyWhenNew((counts: readonly Count[]) => {
    verdicts.replaceChildren(
      ...counts.map(({ name, text }) => {
        const kind = { class: `count ${name.replace(' ', '-')}` };
        return name === 'problem' ? el('a', { ...kind, href: '#problems' }, text) : el('span', kind, text);
      }),
    );
  });
  return {
    element: el(
      'section',
      { class: 'summary', 'aria-label': 'summary' },
      el('div', { class: 'telling' }, figures, verdicts, spoken),
      el(
        'div',
        { class: 'doing' },
        back,
        forth,
        el('span', { class: 'units', role: 'group', 'aria-label': 'units' }, ...units.map(([, made]) => made)),
      ),
    ),
    update(view) {
      const text = figuresText(view);
      const counts = countsOf(view);
      setText(figures, text);
      fill(counts);
      say([text, ...counts.map((count) => count.text)].join(', '));
      back.disabled = !view.canUndo;
      forth.disabled = !view.canRedo;
      for (const [one, made] of units) made.setAttribute('aria-pressed', `${one === view.units}`);
    },
  };
}

interface Count {
  /** Of the class of its color. */
  readonly name: string;
  readonly text: string;
}

function figuresText({ piece, units, mark }: View): string {
  if (!piece) return 'there is no piece yet';
  const { mass, boardFeet } = piece.numbers();
  const [length, width, height] = keySizes(piece, units);
  const before = mark?.piece.numbers().mass;
  const weight = formatMass(mass, units);
  const was = before !== undefined && formatMass(before, units) !== weight ? ` (was ${formatMass(before, units)})` : '';
  const size = [length, width, height].map((one) => one!.text).join(' × ');
  return `${size}; ${weight}${was}; ${formatNumber(boardFeet, 1)} board feet`;
}

function countsOf({ issues, failure, found }: View): readonly Count[] {
  const problems = issues.length + (failure === undefined ? 0 : 1);
  const all = findingsOf(found);
  const pending = pendingChecks(found);
  const countOf = (name: Verdict): number => all.filter(({ verdict }) => verdict === name).length;
  const counts = VERDICTS.filter((name) => name !== 'not checked' || countOf(name) > 0).map((name) => ({
    name,
    text: `${countOf(name)} ${name}`,
  }));
  return [
    ...(problems > 0 ? [{ name: 'problem', text: problems === 1 ? '1 problem' : `${problems} problems` }] : counts),
    ...(problems === 0 && pending > 0 ? [{ name: 'pending', text: `${pending} being worked out` }] : []),
  ];
}

/** Says a text once nothing has changed for a while. */
function speaker(element: HTMLElement): (text: string) => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return (text) => {
    clearTimeout(timer);
    timer = setTimeout(() => setText(element, text), QUIET);
  };
}
