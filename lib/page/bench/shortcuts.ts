import type { Hands } from './view.ts';

/** Ctrl+Z and Ctrl+Shift+Z (or Ctrl+Y) for the values; a text that is being typed keeps its own. */
export function shortcuts({ undo, redo }: Hands): void {
  addEventListener('keydown', (event) => {
    const { key, ctrlKey, metaKey, shiftKey, target } = event;
    if (!ctrlKey && !metaKey) return;
    if (target instanceof HTMLInputElement && target.type === 'text' && target.value !== target.defaultValue) return;
    const name = key.toLowerCase();
    const isRedo = name === 'y' || (name === 'z' && shiftKey);
    if (!isRedo && name !== 'z') return;
    event.preventDefault();
    if (isRedo) redo();
    else undo();
  });
}
