import type { SceneData } from '../../derive/scene/scene-data.ts';
import { around, type Box } from './box.ts';
import { makeDimensions } from './dimensions.ts';
import { betweenEyes, type Eye, eyeFor, type Move, movedEye, towardEye } from './eye.ts';
import { eyeInput } from './eye-input.ts';
import { makePiece } from './piece.ts';
import { makeRoom } from './room.ts';
import { type SceneOptions, type SceneView, VIEW_NAMES, type ViewName } from './scene-view.ts';
import { FIELD, makeStage } from './stage.ts';

/** Milliseconds from one view to the next. */
const GLIDE = 650;

/** Puts a scene into a box of the page, as large as the box; undefined where the browser has no WebGL. */
export function mountScene(container: HTMLElement, data: SceneData, options: SceneOptions = {}): SceneView | undefined {
  const stage = makeStage();
  if (!stage) return undefined;
  const { scene, camera, renderer } = stage;
  const [piece, room, sizes] = [makePiece(), makeRoom(), makeDimensions()];
  scene.add(piece.group, room.group, sizes.lines);

  const element = document.createElement('div');
  element.className = 'scene';
  element.tabIndex = 0;
  element.setAttribute('role', 'application');
  element.setAttribute('aria-roledescription', '3-D picture');
  element.setAttribute('aria-label', options.label ?? data.words.title);
  renderer.domElement.setAttribute('aria-hidden', 'true');
  element.append(renderer.domElement, sizes.labels);
  container.append(element);

  const state = {
    data,
    units: options.units ?? data.units,
    dimensions: options.dimensions ?? false,
    seats: options.seats ?? false,
    people: options.people ?? false,
    view: options.eye ? undefined : ((options.view ?? 'whole') as ViewName | undefined),
    open: 0,
    drawn: 0,
  };
  const size = { width: 1, height: 1 };
  let eye: Eye = options.eye ?? eyeFor('whole', data.bounds, FIELD, 1);
  let glide: { from: Eye; to: Eye; open: readonly [number, number]; start: number } | undefined;
  let frame = 0;

  const isStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;
  const request = (): void => {
    frame ||= requestAnimationFrame(draw);
  };
  const apartBox = (): Box =>
    around(
      state.data.parts.map(({ apart }) => ({
        min: [0, 1, 2].map((k) => state.data.bounds.min[k]! + Math.min(0, apart[k]!)) as unknown as Box['min'],
        max: [0, 1, 2].map((k) => state.data.bounds.max[k]! + Math.max(0, apart[k]!)) as unknown as Box['max'],
      })),
    );
  const boxOf = (view: ViewName): Box => {
    if (view === 'joints') return apartBox();
    return around([state.data.bounds, ...room.boxes(), ...(state.dimensions ? [sizes.box()] : [])]);
  };
  const aim = (view: ViewName): Eye => eyeFor(view, boxOf(view), FIELD, size.width / size.height);
  const light = (): void => stage.light(around([apartBox(), ...room.boxes()]));
  const open = (share: number): void => {
    state.open = share;
    piece.open(share);
    // With its joints open the piece is larger than it is.
    sizes.show(state.dimensions && share === 0);
    room.show({ seats: state.seats && share === 0, people: state.people && share === 0 });
    stage.moved();
  };
  const step = (now: number): void => {
    if (!glide) return;
    const share = Math.min(1, (now - glide.start) / GLIDE);
    const eased = share * share * (3 - 2 * share);
    eye = betweenEyes(glide.from, glide.to, eased);
    const opened = glide.open[0] + (glide.open[1] - glide.open[0]) * eased;
    if (opened !== state.open) open(opened);
    glide = share < 1 ? glide : undefined;
    if (glide) request();
  };
  const draw = (now: number): void => {
    frame = 0;
    step(now);
    const toward = towardEye(eye);
    camera.position.set(
      eye.target[0] + toward[0] * eye.distance,
      eye.target[1] + toward[1] * eye.distance,
      eye.target[2] + toward[2] * eye.distance,
    );
    camera.lookAt(...eye.target);
    camera.near = Math.max(20, eye.distance * 0.05);
    camera.far = eye.distance + 20000;
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
    renderer.render(scene, camera);
    sizes.settle(camera, size.width, size.height);
    state.drawn += 1;
    element.dataset['drawn'] = String(state.drawn);
  };
  const go = (view: ViewName, at = performance.now()): void => {
    const to = { eye: aim(view), open: view === 'joints' ? 1 : 0 };
    if (isStill() || state.drawn === 0) {
      glide = undefined;
      eye = to.eye;
      open(to.open);
    } else {
      glide = { from: eye, to: to.eye, open: [state.open, to.open], start: at };
    }
    request();
  };
  const setView = (view: ViewName): void => {
    state.view = view;
    go(view);
    options.onView?.(view);
  };
  const move = (by: Move): void => {
    if (glide) open(glide.open[1]);
    glide = undefined;
    eye = movedEye(eye, by, FIELD);
    if (state.view !== undefined) {
      state.view = undefined;
      options.onView?.(undefined);
    }
    request();
  };
  /** The room or the sizes have changed: a named view takes them in. */
  const refit = (): void => {
    open(state.open);
    light();
    if (state.view && state.drawn > 0) go(state.view);
    request();
  };
  const key = (name: string): boolean => {
    const view = name === 'Home' ? 'whole' : VIEW_NAMES[Number(name) - 1];
    if (!view) return false;
    setView(view);
    return true;
  };
  const input = eyeInput(element, move, key);
  const resize = (): void => {
    const [width, height] = [container.clientWidth, container.clientHeight];
    if (width === 0 || height === 0 || (width === size.width && height === size.height)) return;
    Object.assign(size, { width, height });
    renderer.setSize(width, height);
    camera.aspect = width / height;
    if (state.view) {
      glide = undefined;
      eye = aim(state.view);
      open(state.view === 'joints' ? 1 : 0);
    }
    request();
  };
  const watch = new ResizeObserver(resize);
  watch.observe(container);
  renderer.domElement.addEventListener('webglcontextrestored', () => {
    stage.moved();
    request();
  });

  const update = (next: SceneData): void => {
    state.data = next;
    piece.update(next);
    room.update(next);
    sizes.update(next, state.units);
    piece.open(state.open);
    light();
    request();
  };
  update(data);
  open(state.view === 'joints' ? 1 : 0);
  light();
  resize();

  return {
    element,
    eye: () => eye,
    update,
    setView,
    setUnits(units) {
      state.units = units;
      sizes.update(state.data, units);
      request();
    },
    showDimensions(on) {
      state.dimensions = on;
      refit();
    },
    showSeats(on) {
      state.seats = on;
      refit();
    },
    showPeople(on) {
      state.people = on;
      refit();
    },
    highlight(parts) {
      piece.highlight(parts);
      request();
    },
    turn: move,
    dispose() {
      cancelAnimationFrame(frame);
      watch.disconnect();
      input.dispose();
      piece.dispose();
      room.dispose();
      sizes.dispose();
      stage.dispose();
      element.remove();
    },
  };
}
