import type { Mark } from '../../drawing/entity.ts';
import { explode } from '../../drawing/explode.ts';
import type { Sheet } from './sheet.ts';

/** Everything that is down on a sheet, dimensions laid out. */
export const flatMarks = ({ entities, style }: Pick<Sheet, 'entities' | 'style'>): readonly Mark[] =>
  entities.flatMap((entity) => (entity.kind === 'dim' ? explode(entity, style).entities : [entity]));
