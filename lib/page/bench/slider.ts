import type { Param } from '../../params/param.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { el, setAttribute } from './dom.ts';
import type { FieldHands } from './field.ts';
import { type Scale, scaleOf, stopsOf } from './scale.ts';

/** A slider over the numbers of a parameter, in round steps. */
export interface Slider {
  readonly element: HTMLInputElement;
  show(value: number | undefined, text: string, units: UnitSystem): void;
  limit(range: { readonly min: number; readonly max: number }): void;
}

type Numeric = Extract<Param, { readonly min: number; readonly max: number }>;

/** The slider of a parameter that may be a number; undefined for all others. */
export function sliderFor(param: Param, label: string, hands: FieldHands): Slider | undefined {
  if (param.kind === 'lengths' || !('min' in param)) return undefined;
  return makeSlider(param, label, hands);
}

function makeSlider(param: Numeric, label: string, hands: FieldHands): Slider {
  const element = el('input', { type: 'range', step: 1, 'aria-label': `${label}, slider` });
  let scale: Scale = scaleOf(param, 'in')!;
  let units: UnitSystem | undefined;
  let limits: { readonly min: number; readonly max: number } = param;
  let held = false;
  let drags = 0;
  const mark = (): void => {
    const { first, last } = stopsOf(scale, limits);
    setAttribute(element, 'min', first);
    setAttribute(element, 'max', Math.max(first, last));
    element.disabled = last <= first;
  };
  const grasp = (): void => {
    if (held) return;
    hands.askLimits();
    held = true;
  };
  const release = (): void => {
    held = false;
  };
  // Keys that are pressed one after the other are one movement, as a drag is.
  for (const start of ['focus', 'pointerdown']) element.addEventListener(start, () => (drags += 1));
  element.addEventListener('pointerdown', grasp);
  element.addEventListener('keydown', grasp);
  element.addEventListener('input', () => hands.set(scale.text(Number(element.value)), `drag ${label} ${drags}`));
  for (const end of ['change', 'pointerup', 'pointercancel', 'keyup', 'blur']) element.addEventListener(end, release);
  return {
    element,
    show(value, text, shownUnits) {
      if (units !== shownUnits) {
        units = shownUnits;
        scale = scaleOf(param, units)!;
        mark();
      }
      element.hidden = value === undefined;
      if (value === undefined) return;
      const at = `${Math.round(value / scale.step)}`;
      if (!held && element.value !== at) element.value = at;
      setAttribute(element, 'aria-valuetext', text);
    },
    // The slider under the hand keeps its ends: they would run away from it.
    limit(range) {
      if (held) return;
      limits = range;
      const { value } = element;
      mark();
      element.value = value;
    },
  };
}
