import { runChecks } from '../derive/checks/checks.ts';
import { type Axis, combinations, type Step, type Trial, type WhatIf } from '../derive/what-if/what-if.ts';
import { brokenRules } from '../params/broken-rules.ts';
import { formatValue } from '../params/format-value.ts';
import type { Param, Value } from '../params/param.ts';
import { refusalText } from '../params/refusal-text.ts';
import type { Fields, ValuesOf } from '../params/spec.ts';
import { setPath, valueAt } from '../params/values.ts';
import type { Variation } from '../params/variation.ts';
import { defineShop, type Shop } from '../shop/shop.ts';
import { derivedNumbers } from './derived.ts';
import type { Design } from './design.ts';
import { checkContext, makeJob } from './job.ts';

export interface WhatIfOptions {
  readonly shop?: Shop;
  /** Awaited before each trial, so that the caller can show how far it is and hear that it is to stop. */
  readonly onTrial?: (done: number, all: number) => void | Promise<void>;
  readonly stop?: AbortSignal;
}

/** Tries a design at every value of one parameter or two. No fixes are sought: those are for a single piece. */
export async function whatIf<F extends Fields>(
  design: Design<F>,
  values: ValuesOf<F>,
  variations: readonly Variation[],
  options: WhatIfOptions = {},
): Promise<WhatIf> {
  const { shop = defineShop(), onTrial = () => {}, stop } = options;
  const axes = variations.map((variation) => axisOf(design, values, variation));
  const trials: Trial[] = [];
  const places = combinations(axes);
  for (const at of places) {
    await onTrial(trials.length, places.length);
    stop?.throwIfAborted();
    const moved = variations.reduce(
      (now, one, k) => setPath(design.params, now, one.path, one.values[at[k]!]!),
      values,
    );
    trials.push({ at, ...tryOut(design, moved, shop) });
  }
  return { axes, trials };
}

function axisOf<F extends Fields>({ params, units }: Design<F>, values: ValuesOf<F>, variation: Variation): Axis {
  const { path } = variation;
  const param = params.table.get(path)!;
  const step = (value: Value): Step => ({
    text: formatValue<Param>(param, value as never, units),
    number: typeof value === 'number' ? value : undefined,
  });
  return { path, label: param.label, steps: variation.values.map(step), now: step(valueAt(values, path)) };
}

type Found = Pick<Extract<Trial, { mass: number }>, 'findings' | 'mass' | 'boardFeet'> | { readonly refused: string };

function tryOut<F extends Fields>(design: Design<F>, values: ValuesOf<F>, shop: Shop): Found {
  const broken = brokenRules(design.params, values, design.units);
  if (broken.length > 0) return { refused: refusalText(design.params, broken, design.units) };
  try {
    const job = makeJob(design, values, shop);
    const { tune: _, ...context } = checkContext(design, values, job.assembly, shop);
    const { mass } = derivedNumbers(job);
    return { findings: runChecks(context), mass, boardFeet: job.cutList.boardFeetRough };
  } catch (error) {
    // Values that pass all rules and still cannot be put together.
    if (error instanceof RangeError) return { refused: error.message.split('\n')[0]! };
    throw error;
  }
}
