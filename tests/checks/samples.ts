import { checkContext } from '../../lib/build/job.ts';
import type { Check, CheckContext } from '../../lib/derive/checks/check.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { sampleOf } from '../tables/random-values.ts';
import { DESIGNS } from '../written.ts';
import { untuned } from './tried.ts';

export interface SampledTable {
  /** Enough to make it again by hand. */
  readonly name: string;
  readonly context: CheckContext;
}

/** Tables of any values that the rules allow, the same for the same seeds. */
export function sampledTables(first: number, count: number): SampledTable[] {
  return Array.from({ length: count }, (_, k) => {
    const { name, design, values } = sampleOf(first + k);
    const from = DESIGNS[design];
    return { name, context: checkContext(from, values, from.compose(values, from.title), defineShop()) };
  });
}

/** A table and the same one with a parameter moved by some steps; undefined when the rules or its limits refuse that. */
export function movedBy(context: CheckContext, path: string, steps: number): CheckContext | undefined {
  const tune = context.tune!;
  const { min, max } = tune.limits(path);
  const value = tune.value(path)! + steps * tune.step(path);
  return value < min || value > max ? undefined : tune.moved(path, value);
}

/** Values of the findings of a check, by name, load and place. */
export function valuesBy(check: Check, context: CheckContext): Map<string, number> {
  const key = ({ check: name, load, where, part }: Finding): string => [name, load, where ?? part].join(' | ');
  return new Map(check.run(untuned(context)).flatMap((f) => (f.value === undefined ? [] : [[key(f), f.value]])));
}
