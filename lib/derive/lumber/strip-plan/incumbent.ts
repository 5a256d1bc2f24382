import type { Judged } from './judge.ts';
import type { StripModel } from './strip-model.ts';

/** The best plan so far, shared by all parts of a search. */
export interface Incumbent {
  /** Infinity before there is one; only what is cheaper is looked for. */
  value: number;
  best?: Judged;
}

/** Takes a plan that is cheaper; answers whether it is. */
export function improve({ prices }: StripModel, incumbent: Incumbent, judged: Judged): boolean {
  if (judged.value >= incumbent.value - prices.alike) return false;
  incumbent.value = judged.value;
  incumbent.best = judged;
  return true;
}

/** Work done and allowed. */
export interface Effort {
  spent: number;
  limit: number;
}
