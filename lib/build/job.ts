import type { CheckContext } from '../derive/checks/check.ts';
import { runChecks } from '../derive/checks/checks.ts';
import { type Bill, bill } from '../derive/cut-list/bill.ts';
import { type CutList, cutList } from '../derive/cut-list/cut-list.ts';
import { type Shape, shapesOf } from '../derive/solids/shapes.ts';
import type { Assembly } from '../model/assembly.ts';
import type { Finding } from '../model/finding.ts';
import type { PartId } from '../model/part.ts';
import type { Records } from '../model/records.ts';
import type { UndersideFit } from '../model/underside-fit.ts';
import type { Fields, ValuesOf } from '../params/spec.ts';
import { defineLoads } from '../shop/loads.ts';
import { defineShop, type Shop } from '../shop/shop.ts';
import { defineSite } from '../shop/site.ts';
import type { Design } from './design.ts';
import { forcedBy } from './forced.ts';
import { listedAssembly } from './listed-assembly.ts';
import { composeOn, fitOf } from './measured-top.ts';
import { tuneOf } from './tune.ts';

/** A design with its values, put together, and everything derived from it; what is not asked for is not made. */
export interface Job {
  readonly design: Design;
  readonly values: ValuesOf<Fields>;
  readonly shop: Shop;
  /** What was measured in the shop. */
  readonly records: Records;
  /** The piece as it is built: fitted to the underside as measured, where it was. */
  readonly assembly: Assembly;
  /** The piece as designed; the same one when nothing was measured. */
  readonly nominal: Assembly;
  /** The underside fitted to its readings; absent when it was not measured. */
  readonly fit?: UndersideFit;
  readonly shapes: ReadonlyMap<PartId, Shape>;
  readonly findings: readonly Finding[];
  /** What the papers are made in spite of, a sentence each; empty unless a finding says "change it". */
  readonly forced: readonly string[];
  readonly cutList: CutList;
  readonly bill: Bill;
}

/**
 * Puts a design together.
 *
 * @throws RangeError from the design's `compose` when its parts cannot be put together, and for readings that make no
 * underside: `readRecords` tells those as issues before.
 */
export function makeJob<F extends Fields>(
  design: Design<F>,
  values: ValuesOf<F>,
  shop: Shop = defineShop(),
  records: Records = {},
): Job {
  const nominal = design.compose(values, design.title);
  const fit = records.underside && fitOf(nominal, records.underside);
  const assembly = fit ? design.compose(values, design.title, { underside: fit.surface }) : nominal;
  const made: Made = { records, nominal, ...(fit ? { fit } : {}) };
  const listed = once(() => listedAssembly(assembly, nominal));
  const list = once(() => cutList(listed()));
  const shapes = once(() => shapesOf(assembly));
  const findings = once(() => runChecks(checkContext(design, values, assembly, shop, made)));
  const needs = once(() => bill(listed(), list()));
  return {
    design: design as unknown as Design,
    values: values as ValuesOf<Fields>,
    shop,
    records,
    assembly,
    nominal,
    ...(fit ? { fit } : {}),
    get shapes() {
      return shapes();
    },
    get findings() {
      return findings();
    },
    get forced() {
      return forcedBy(findings());
    },
    get cutList() {
      return list();
    },
    get bill() {
      return needs();
    },
  };
}

/** What was measured of a piece while it is made, and what it was to be. */
type Made = Pick<Job, 'records' | 'nominal' | 'fit'>;

/**
 * All that the checks ask of a design: the piece, shop, site and loads, and its parameters to try fixes with. A top that was
 * measured is made: fixes are tried with it as it is, and those that would shape it anew are none.
 */
export function checkContext<F extends Fields>(
  design: Design<F>,
  values: ValuesOf<F>,
  assembly: Assembly,
  shop: Shop,
  made?: Made,
): CheckContext {
  const { units, params, title, date } = design;
  const common = { units, shop, site: defineSite(design.site), loads: defineLoads(design.loads) };
  const compose = (moved: ValuesOf<F>): Assembly =>
    made?.fit ? composeOn(made.fit.surface, made.nominal, moved, design) : design.compose(moved, title);
  const tune = tuneOf(params, values, units, compose, common);
  const { fit, nominal, records } = made ?? {};
  return {
    ...common,
    assembly,
    tune,
    ...(fit && nominal ? { measured: { fit, nominal, revised: date } } : {}),
    ...(records?.boards ? { boards: records.boards } : {}),
  };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
