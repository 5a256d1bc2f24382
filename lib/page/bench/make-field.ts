import type { ParamRow } from '../../params/describe-params.ts';
import { rangeOf } from '../../params/must-be.ts';
import type { Param } from '../../params/param.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { button, el, onlyWhenNew, setAttribute, setText } from './dom.ts';
import { entryFor } from './entry.ts';
import type { Field, FieldHands, FieldState, Problem } from './field.ts';
import { problemText } from './problem-text.ts';
import { textOf } from './read-edits.ts';
import { sliderFor } from './slider.ts';

/** The field of a parameter: label, entry, slider, range and default, what it was, and what is wrong with it. */
export function makeField(param: Param, row: ParamRow, hands: FieldHands): Field {
  const id = `field-${row.path.replaceAll('.', '-')}`;
  const entry = entryFor(param, id, hands);
  const slider = sliderFor(param, `${row.groups.join(', ')}: ${row.label}`, hands);
  const now = el('span', { class: 'now' });
  const said = el('span');
  const hint = el('p', { class: 'hint', id: `${id}-hint` }, said, now);
  const moved = el('p', { class: 'moved-from', hidden: true });
  const problems = el('div', { class: 'field-problems', id: `${id}-problems`, 'aria-live': 'polite' });
  setAttribute(entry.input, 'aria-describedby', `${id}-hint ${id}-problems`);
  const element = el(
    'div',
    { class: `field of-${param.kind}` },
    el('label', { for: id }, row.label),
    el('code', { class: 'path' }, row.path),
    entry.input,
    slider?.element,
    hint,
    moved,
    problems,
  );
  let units: FieldState['units'] = 'in';
  const fillProblems = onlyWhenNew((found: readonly Problem[]) => {
    problems.replaceChildren(...found.flatMap((problem) => problemLines(problem, hands)));
    setAttribute(entry.input, 'aria-invalid', found.length > 0 ? 'true' : undefined);
    element.classList.toggle('wrong', found.length > 0);
  });
  const fillMoved = onlyWhenNew(
    ({ was, design }: { readonly was?: string | undefined; readonly design?: string | undefined }) => {
      element.classList.toggle('moved', was !== undefined);
      moved.hidden = was === undefined && design === undefined;
      moved.replaceChildren(
        ...(was === undefined ? [] : [`was ${was}`]),
        ...(design === undefined
          ? []
          : [
              button(design === was ? 'put back' : `put back ${design}`, hands.putBack, {
                'aria-label': `put back ${design}, ${row.label}`,
              }),
            ]),
      );
    },
  );
  return {
    element,
    input: entry.input,
    update(state) {
      units = state.units;
      setText(said, hintText(row, param, units));
      entry.show(state.text);
      const value = typeof state.value === 'number' ? state.value : undefined;
      slider?.show(value, state.text, state.units);
      element.classList.toggle('unsliding', !slider || value === undefined);
      fillMoved({ was: state.was, design: state.design });
      fillProblems(state.problems);
    },
    limit(range) {
      if (!range) return;
      const unit = param.kind === 'length' ? units : param.kind === 'quantity' ? param.unit : '';
      const isNarrower = 'min' in param && (range.min > param.min || range.max < param.max);
      setText(now, isNarrower ? ` With the rest as it is: ${rangeOf({ ...range, unit }, units)}.` : '');
      slider?.limit(range);
    },
  };
}

/** `6 mm to 5 in; default 1 1/8 in. The same as …` */
function hintText(row: ParamRow, param: Param, units: UnitSystem): string {
  const { entries, kind, default: usual, help, because } = row;
  const given = kind === 'text' ? `"${usual}"` : usual || 'none';
  const isMetric = units === 'mm' && param.kind === 'length';
  const limits = [isMetric ? rangeOf({ ...param, unit: 'mm' }, 'mm') : writtenRange(row), entries].filter(Boolean);
  const first = [...limits, `default ${isMetric ? textOf(param, param.default, 'mm') : given}`].join('; ');
  return [first, help, because].filter(Boolean).map(sentence).join(' ');
}

/** In the words of the spec. */
const writtenRange = ({ min, max }: ParamRow): string => (min && max ? `${min} to ${max}` : max && `up to ${max}`);

const sentence = (text: string): string => `${text[0]!.toUpperCase()}${text.slice(1)}.`;

function problemLines(problem: Problem, hands: FieldHands): HTMLElement[] {
  const tried = problem.try;
  return [
    problemText(problem.text),
    ...(tried === undefined ? [] : [button(`take ${tried}`, () => hands.set(tried), { class: 'take' })]),
  ];
}
