import { unpackScene } from '../../derive/scene/pack-scene.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import { mountScene } from '../scene/mount-scene.ts';
import type { SceneView, ViewName } from '../scene/scene-view.ts';

const all = (selector: string): HTMLElement[] => [...document.querySelectorAll<HTMLElement>(selector)];

const press = (button: HTMLElement, on: boolean): void => button.setAttribute('aria-pressed', String(on));

/** Brings the page for the client to life; where there is no WebGL it stays the page of still pictures that it is. */
export function showPreview(): void {
  const stage = document.querySelector<HTMLElement>('#stage')!;
  const section = stage.closest<HTMLElement>('section')!;
  const data = unpackScene(document.querySelector('#scene')!.textContent!);
  const view = mountScene(stage, data, {
    label: `${data.words.title}, to turn about`,
    onView: (name) => {
      for (const button of all('[data-view]')) press(button, button.dataset['view'] === name);
    },
  });
  if (!view) {
    section.hidden = true;
    document.body.classList.add('flat');
    return;
  }
  requestAnimationFrame(() => stage.querySelector('.poster')?.remove());
  view.element.setAttribute('aria-describedby', 'hint');
  for (const button of all('.tools button')) button.addEventListener('click', () => answer(button, view));
}

const TOGGLES: Readonly<Record<string, (view: SceneView, on: boolean) => void>> = {
  dimensions: (view, on) => view.showDimensions(on),
  seats: (view, on) => view.showSeats(on),
  people: (view, on) => view.showPeople(on),
};

const TURNS: Readonly<Record<string, Parameters<SceneView['turn']>[0]>> = {
  left: { turn: -15 },
  right: { turn: 15 },
  up: { tilt: 10 },
  down: { tilt: -10 },
  near: { zoom: 0.85 },
  far: { zoom: 1 / 0.85 },
};

function answer(button: HTMLElement, view: SceneView): void {
  const { view: name, toggle, unit, turn } = button.dataset;
  if (name) view.setView(name as ViewName);
  if (turn) view.turn(TURNS[turn]!);
  if (unit) {
    for (const span of all('span[data-units]')) span.hidden = span.dataset['units'] !== unit;
    for (const other of all('[data-unit]')) press(other, other === button);
    view.setUnits(unit as UnitSystem);
  }
  if (toggle) {
    const on = button.getAttribute('aria-pressed') !== 'true';
    press(button, on);
    TOGGLES[toggle]!(view, on);
  }
}
