import type { Design } from '../../lib/build/design.ts';
import { readSources } from '../../lib/params/read-values.ts';
import type { Fields, ValuesOf } from '../../lib/params/spec.ts';
import type { UnitSystem } from '../../lib/units/format-length.ts';
import type { Problem } from '../report/problem.ts';
import type { DesignRef } from './design-ref.ts';
import { guardCompose } from './guard-compose.ts';
import type { Inputs } from './inputs.ts';
import { loadDesign } from './load-design.ts';

/** A loaded design with the values it is to be made with. */
export interface Request {
  readonly ref: DesignRef;
  readonly design: Design;
  readonly values: ValuesOf<Fields>;
}

export type RequestOutcome =
  | { readonly request: Request; readonly problems?: never; readonly units?: never }
  | { readonly problems: readonly Problem[]; readonly units: UnitSystem | undefined; readonly request?: never };

/** Loads a design and reads its values; what was already wrong with the inputs is told with the rest. */
export async function readRequest(ref: DesignRef, inputs: Inputs): Promise<RequestOutcome> {
  const { design, problems } = await loadDesign(ref);
  if (!design) return { problems: [...inputs.problems, ...problems], units: undefined };
  const given = { values: design.values, from: 'the design file' };
  const sources = inputs.file ? [given, inputs.file] : [given];
  const { values, issues = [] } = inputs.incomplete ? {} : readSources(design.params, sources, inputs.overrides);
  if (values && inputs.problems.length === 0) return { request: { ref, design: guardCompose(design, ref), values } };
  return { problems: [...inputs.problems, ...issues], units: design.units };
}
