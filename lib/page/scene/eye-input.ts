import type { Move } from './eye.ts';

export interface EyeInput {
  dispose(): void;
}

/** Degrees that a drag over the whole height of the picture turns, and that one key turns. */
const DRAG = 180;
const KEY = 7.5;

const KEYS: Readonly<Record<string, Move>> = {
  ArrowLeft: { turn: -KEY },
  ArrowRight: { turn: KEY },
  ArrowUp: { tilt: KEY },
  ArrowDown: { tilt: -KEY },
  '+': { zoom: 0.9 },
  '=': { zoom: 0.9 },
  '-': { zoom: 1 / 0.9 },
};

/** With the shift key held, arrows shift the picture. */
const SHIFTED: Readonly<Record<string, Move>> = {
  ArrowLeft: { pan: [0.04, 0] },
  ArrowRight: { pan: [-0.04, 0] },
  ArrowUp: { pan: [0, -0.04] },
  ArrowDown: { pan: [0, 0.04] },
};

/**
 * Mouse, touch and keys on a box: drag to turn, wheel or pinch to come nearer, two fingers, right button or shift to
 * shift. `key` hears of keys that turn nothing.
 */
export function eyeInput(box: HTMLElement, move: (by: Move) => void, key: (name: string) => boolean): EyeInput {
  const down = new Map<number, { x: number; y: number }>();
  const stop = new AbortController();
  const { signal } = stop;

  const spread = (): { x: number; y: number; size: number } => {
    const [a, b] = [...down.values()] as [{ x: number; y: number }, { x: number; y: number }];
    return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, size: Math.hypot(a.x - b.x, a.y - b.y) || 1 };
  };
  const onMove = (event: PointerEvent): void => {
    const last = down.get(event.pointerId);
    if (!last) return;
    const height = box.clientHeight || 1;
    const before = down.size === 2 ? spread() : undefined;
    const [dx, dy] = [(event.clientX - last.x) / height, (event.clientY - last.y) / height];
    down.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (before) {
      const after = spread();
      const pan = [(after.x - before.x) / height, (before.y - after.y) / height] as const;
      move({ zoom: before.size / after.size, pan });
    } else if (down.size === 1) {
      const shifts = event.buttons === 2 || event.shiftKey;
      move(shifts ? { pan: [dx, -dy] } : { turn: -dx * DRAG, tilt: dy * DRAG });
    }
  };
  const onUp = (event: PointerEvent): void => {
    down.delete(event.pointerId);
  };
  box.addEventListener(
    'pointerdown',
    (event) => {
      down.set(event.pointerId, { x: event.clientX, y: event.clientY });
      box.setPointerCapture(event.pointerId);
    },
    { signal },
  );
  box.addEventListener('pointermove', onMove, { signal });
  box.addEventListener('pointerup', onUp, { signal });
  box.addEventListener('pointercancel', onUp, { signal });
  box.addEventListener('contextmenu', (event) => event.preventDefault(), { signal });
  box.addEventListener(
    'wheel',
    (event) => {
      // A page that is scrolled past the picture must go on scrolling: the wheel is for who has taken hold of it.
      if (document.activeElement !== box && !event.ctrlKey) return;
      event.preventDefault();
      move({ zoom: Math.exp(Math.max(-60, Math.min(60, event.deltaY)) * 0.003) });
    },
    { signal, passive: false },
  );
  box.addEventListener(
    'keydown',
    (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const by = (event.shiftKey ? SHIFTED : KEYS)[event.key] ?? KEYS[event.key];
      if (by) move(by);
      if (by || key(event.key)) event.preventDefault();
    },
    { signal },
  );
  return { dispose: () => stop.abort() };
}
