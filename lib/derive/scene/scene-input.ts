import type { Assembly } from '../../model/assembly.ts';
import type { PartId } from '../../model/part.ts';
import type { Site } from '../../shop/site.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Shape } from '../solids/shapes.ts';

/** What a scene is made from: a job, or as much of one as a page has at hand. */
export interface SceneInput {
  readonly title: string;
  readonly number?: string | undefined;
  readonly revision: string;
  /** YYYY-MM-DD. */
  readonly date: string;
  readonly units: UnitSystem;
  /** What must not be overlooked. */
  readonly warning?: string | undefined;
  /** The finish in words; absent when nobody has said. */
  readonly finish?: string | undefined;
  readonly assembly: Assembly;
  /** Of every part; asked only for those that are seen. */
  readonly shapes: { get(id: PartId): Pick<Shape, 'solid'> | undefined };
  readonly site: Site;
}
