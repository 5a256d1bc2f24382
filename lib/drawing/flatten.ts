import type { Drawing } from './drawing.ts';
import type { Mark } from './entity.ts';
import { explode } from './explode.ts';

/** Everything a drawing puts on paper, its dimensions laid out, in the order of its entities. */
export function flatten(drawing: Drawing): readonly Mark[] {
  return drawing.entities.flatMap((entity) =>
    entity.kind === 'dim' ? explode(entity, drawing.style).entities : [entity],
  );
}
