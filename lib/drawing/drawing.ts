import type { Dim } from './dim.ts';
import type { Mark } from './entity.ts';
import type { Style } from './style.ts';

/** Anything in a drawing. A dimension becomes marks in `explode` and nowhere else. */
export type Entity = Mark | Dim;

/** One view, in model mm; what is bound to the paper (lettering, arrowheads, line widths) takes its size from the style. */
export interface Drawing {
  readonly title: string;
  readonly style: Style;
  readonly entities: readonly Entity[];
}
