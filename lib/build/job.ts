import { runChecks } from '../derive/checks/checks.ts';
import { type Bill, bill } from '../derive/cut-list/bill.ts';
import { type CutList, cutList } from '../derive/cut-list/cut-list.ts';
import { type Shape, shapesOf } from '../derive/solids/shapes.ts';
import { type Template, templates } from '../derive/templates/templates.ts';
import type { Assembly } from '../model/assembly.ts';
import type { Finding } from '../model/finding.ts';
import type { PartId } from '../model/part.ts';
import type { Fields, ValuesOf } from '../params/spec.ts';
import type { Design } from './design.ts';

/** A design with its values, put together, and everything derived from it; what is not asked for is not made. */
export interface Job {
  readonly design: Design;
  readonly values: ValuesOf<Fields>;
  readonly assembly: Assembly;
  readonly shapes: ReadonlyMap<PartId, Shape>;
  readonly findings: readonly Finding[];
  readonly cutList: CutList;
  readonly bill: Bill;
  readonly templates: readonly Template[];
}

/**
 * Puts a design together.
 *
 * @throws RangeError from the design's `compose` when its parts cannot be put together.
 */
export function makeJob<F extends Fields>(design: Design<F>, values: ValuesOf<F>): Job {
  const { title, revision, date, units } = design;
  const assembly = design.compose(values, title);
  const list = once(() => cutList(assembly));
  const shapes = once(() => shapesOf(assembly));
  const findings = once(() => runChecks({ assembly, units }));
  const needs = once(() => bill(assembly, list()));
  const drawn = once(() => templates(assembly, { title, revision, date, units }));
  return {
    design: design as unknown as Design,
    values: values as ValuesOf<Fields>,
    assembly,
    get shapes() {
      return shapes();
    },
    get findings() {
      return findings();
    },
    get cutList() {
      return list();
    },
    get bill() {
      return needs();
    },
    get templates() {
      return drawn();
    },
  };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
