import type { Design, Fields, Shop, UnitSystem, ValuesOf } from 'tablewright';
import type { Problem } from '../report/problem.ts';
import type { DesignRef } from './design-ref.ts';
import { guardCompose } from './guard-compose.ts';
import type { Inputs } from './inputs.ts';
import { loadDesign } from './load-design.ts';
import { loadShop } from './load-shop.ts';

/** A loaded design with the values it is to be made with. */
export interface Request {
  readonly ref: DesignRef;
  readonly design: Design;
  readonly values: ValuesOf<Fields>;
  readonly shop: Shop;
}

export type RequestOutcome =
  | { readonly request: Request; readonly problems?: never; readonly units?: never }
  | { readonly problems: readonly Problem[]; readonly units: UnitSystem | undefined; readonly request?: never };

/** Loads a design and reads its values; what was already wrong with the inputs is told with the rest. */
export async function readRequest(ref: DesignRef, inputs: Inputs): Promise<RequestOutcome> {
  const { design, problems: broken } = await loadDesign(ref);
  if (!design) return { problems: [...inputs.problems, ...broken], units: undefined };
  const { shop, problems: noShop = [] } = await loadShop();
  const { readSources } = await import('tablewright');
  const given = { values: design.values, from: 'the design file' };
  const sources = inputs.file ? [given, inputs.file] : [given];
  const { values, issues = [] } = inputs.incomplete ? {} : readSources(design.params, sources, inputs.overrides);
  const problems = [...inputs.problems, ...noShop, ...issues];
  if (!values || !shop || problems.length > 0) return { problems, units: design.units };
  return { request: { ref, design: guardCompose(design, ref), values, shop } };
}
