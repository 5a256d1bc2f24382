import type { Entity } from './drawing.ts';
import type { Layer } from './layer.ts';

const same = (a: Layer, b: Layer): boolean =>
  a.width === b.width && a.linetype === b.linetype && a.ink.index === b.ink.index && a.ink.rgb === b.ink.rgb;

/**
 * The layers that entities lie on, in the order they first appear.
 *
 * @throws RangeError when two different layers have one name, which no file format can hold.
 */
export function layersOf(entities: readonly Entity[]): readonly Layer[] {
  const found = new Map<string, Layer>();
  for (const { layer } of entities) {
    const known = found.get(layer.name);
    if (known && !same(known, layer)) {
      throw new RangeError(
        `two layers are called ${layer.name}: ${JSON.stringify(known)} and ${JSON.stringify(layer)}; give one another name`,
      );
    }
    if (!known) found.set(layer.name, layer);
  }
  return [...found.values()];
}
