import { type Derived, derivedNumbers } from '../../build/derived.ts';
import { checkContext, makeJob } from '../../build/job.ts';
import type { CheckContext } from '../../derive/checks/check.ts';
import type { CutList } from '../../derive/cut-list/cut-list.ts';
import type { SceneData } from '../../derive/scene/scene-data.ts';
import { sceneOf } from '../../derive/scene/scene-of.ts';
import { shapesAsked } from '../../derive/solids/shapes-asked.ts';
import type { Assembly } from '../../model/assembly.ts';
import type { Fields, ValuesOf } from '../../params/spec.ts';
import { defineSite } from '../../shop/site.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Bench } from './bench.ts';
import { closedShapes } from './closed-shapes.ts';

/** What values make: the piece and what is quoted of it. */
export interface Piece {
  readonly values: ValuesOf<Fields>;
  /** In the units in which findings are to speak. */
  readonly context: (units: UnitSystem) => CheckContext;
  readonly assembly: Assembly;
  /** With all joints closed: what is hidden in them is left out. */
  readonly scene: SceneData;
  /** Made when asked for, once. */
  readonly wholeScene: () => SceneData;
  readonly numbers: () => Derived;
  readonly cutList: () => CutList;
}

/** Puts pieces together one after the other; shapes that did not change since the last are taken over from it. */
export function pieceMaker({ design, shop, records }: Bench): (values: ValuesOf<Fields>) => Piece {
  const site = defineSite(design.site);
  const shapesOf = shapesAsked();
  const closed = closedShapes();
  const { title, number, revision, date, units } = design;
  return (values) => {
    const job = makeJob(design, values, shop, records);
    const { assembly } = job;
    const shapes = shapesOf(assembly);
    const head = { title, number, revision, date, units, assembly, site };
    let whole: SceneData | undefined;
    let numbers: Derived | undefined;
    return {
      values,
      assembly,
      context: (spoken) => checkContext({ ...design, units: spoken }, values, assembly, shop, job),
      scene: sceneOf({ ...head, shapes: closed(assembly, shapes) }),
      wholeScene() {
        whole ??= sceneOf({ ...head, shapes });
        return whole;
      },
      numbers() {
        numbers ??= derivedNumbers({ assembly, shapes });
        return numbers;
      },
      cutList: () => job.cutList,
    };
  };
}
