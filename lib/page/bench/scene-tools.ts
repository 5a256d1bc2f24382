import { type SceneView, VIEW_NAMES, type ViewName } from '../scene/scene-view.ts';
import { button, el, setAttribute } from './dom.ts';
import type { Looks } from './looks.ts';

/** Buttons for whoever does not drag the picture. */
export interface SceneTools {
  readonly element: HTMLElement;
  /** Shows which of them are pressed. */
  press(looks: Looks): void;
}

export interface SceneHands {
  setView(view: ViewName): void;
  toggleSizes(): void;
  turn: SceneView['turn'];
}

const VIEW_WORDS: { readonly [V in ViewName]: string } = {
  whole: 'whole',
  end: 'end',
  underside: 'underside',
  joints: 'joints open',
};

/** Steps of the buttons that turn the picture, degrees; and that move nearer, as a factor. */
const TURN = 30;
const NEARER = 0.8;

export function sceneTools(hands: SceneHands): SceneTools {
  const views = VIEW_NAMES.map((name) => [name, button(VIEW_WORDS[name], () => hands.setView(name))] as const);
  const sizes = button('sizes', hands.toggleSizes);
  const turner = (text: string, label: string, by: Parameters<SceneView['turn']>[0]): HTMLButtonElement =>
    button(text, () => hands.turn(by), { 'aria-label': label, title: label, class: 'turner' });
  return {
    element: el(
      'div',
      { class: 'tools', role: 'group', 'aria-label': 'picture' },
      ...views.map(([, made]) => made),
      sizes,
      turner('\u2190', 'turn left', { turn: -TURN }),
      turner('\u2192', 'turn right', { turn: TURN }),
      turner('\u2191', 'look from higher', { tilt: TURN / 2 }),
      turner('\u2193', 'look from lower', { tilt: -TURN / 2 }),
      turner('+', 'nearer', { zoom: NEARER }),
      turner('\u2212', 'farther', { zoom: 1 / NEARER }),
    ),
    press({ view, dimensions }) {
      for (const [name, made] of views) setAttribute(made, 'aria-pressed', `${view === name}`);
      setAttribute(sizes, 'aria-pressed', `${dimensions}`);
    },
  };
}
