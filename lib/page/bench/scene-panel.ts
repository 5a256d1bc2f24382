import { mountScene } from '../scene/mount-scene.ts';
import type { SceneView } from '../scene/scene-view.ts';
import { el } from './dom.ts';
import type { Looks } from './looks.ts';
import type { Piece } from './piece.ts';
import { sceneTools } from './scene-tools.ts';
import type { Panel, View } from './view.ts';

export interface ScenePanel extends Panel {
  looks(): Looks;
  /** The meshes of the view alone: called first in a frame, so that the picture is never late. */
  show(view: View): void;
}

/** Quiet after which nothing is dragged any more, ms. */
const QUIET = 600;

/** The picture of the piece. */
export function scenePanel(first: Looks): ScenePanel {
  const box = el('div', { class: 'scene-box' });
  const absent = el('p', { class: 'scene-absent', hidden: true }, 'This browser shows no 3-D picture.');
  let looks = first;
  let scene: SceneView | undefined;
  let shown: Piece | undefined;
  let units: View['units'] | undefined;
  const tools = sceneTools({
    setView: (view) => scene?.setView(view),
    turn: (by) => scene?.turn(by),
    toggleSizes() {
      looks = { ...looks, dimensions: !looks.dimensions };
      scene?.showDimensions(looks.dimensions);
      tools.press(looks);
    },
  });
  tools.press(looks);
  let isOpen = first.view === 'joints';
  const showWhole = (): void => {
    if (shown) scene?.update(shown.wholeScene());
  };
  const atRest = whenAtRest((isOtherSize) => {
    showWhole();
    if (isOtherSize && looks.view) scene?.setView(looks.view);
  });
  const mount = (piece: Piece): void => {
    scene = mountScene(box, isOpen ? piece.wholeScene() : piece.scene, {
      ...(units ? { units } : {}),
      ...(looks.view ? { view: looks.view } : {}),
      ...(looks.eye ? { eye: looks.eye } : {}),
      dimensions: looks.dimensions,
      label: `picture of the ${piece.assembly.title}; arrow keys turn it`,
      onView(view) {
        looks = { ...looks, view };
        tools.press(looks);
        if (view) isOpen = view === 'joints';
        if (isOpen) showWhole();
      },
    });
    absent.hidden = scene !== undefined;
    tools.element.hidden = scene === undefined;
  };
  const show = ({ piece, issues, failure }: View): void => {
    box.classList.toggle('stale', issues.length > 0 || failure !== undefined);
    if (!piece || piece === shown) return;
    if (!shown) mount(piece);
    else scene?.update(isOpen ? piece.wholeScene() : piece.scene);
    shown = piece;
    atRest(piece);
  };
  return {
    element: el('section', { class: 'picture', 'aria-label': 'picture' }, box, absent, tools.element),
    looks: () => ({ ...looks, eye: looks.view === undefined ? scene?.eye() : undefined }),
    show,
    update(view) {
      if (units !== undefined && units !== view.units) scene?.setUnits(view.units);
      units = view.units;
      show(view);
    },
  };
}

/**
 * While a size is dragged the eye stays where it is, and what joints hide is left out; after that the piece is shown whole,
 * and a named view takes it in anew.
 */
function whenAtRest(then: (isOtherSize: boolean) => void): (piece: Piece) => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let seen = '';
  return ({ scene }) => {
    clearTimeout(timer);
    const size = JSON.stringify(scene.bounds);
    if (seen === '') seen = size;
    timer = setTimeout(() => {
      then(size !== seen);
      seen = size;
    }, QUIET);
  };
}
