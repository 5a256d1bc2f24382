import { Annealing } from './anneal.ts';
import type { Incumbent } from './arrange.ts';
import { LabelSearch } from './label-search.ts';
import { planOf } from './plan-of.ts';
import { stripModel } from './strip-model.ts';
import type { StripStatus } from './strip-plan.ts';
import type { StripProblem } from './strip-problem.ts';

export interface StripSearchOptions {
  /** Steps of annealing for a first plan. */
  readonly annealing?: number;
  readonly seed?: number;
  /** Only plans cheaper than this are looked for, as if one of that cost were known. */
  readonly below?: number;
}

/** A search that goes on for as long as it is told, and always knows its best plan and what no plan can beat. */
export interface StripSearch {
  /** Goes on for about that much work, less when it gets done. */
  advance(work: number): StripStatus;
  readonly status: StripStatus;
}

/** Annealing steps that find a plan within a few percent of the best for 24 boards (tried on random piles). */
const ANNEALING = 60_000;
/** Steps between two looks at the work left. */
const CHUNK = 1_000;

/** Begins to search for the best plan. The same problem gives the same plan at the same work, in whatever order its boards come. */
export function planStrips(problem: StripProblem, options: StripSearchOptions = {}): StripSearch {
  const model = stripModel(problem);
  const incumbent: Incumbent = { value: options.below ?? Number.POSITIVE_INFINITY };
  const enough = model.boards.length >= model.strips;
  const annealing = enough
    ? new Annealing(model, incumbent, options.annealing ?? ANNEALING, options.seed ?? 1)
    : undefined;
  const labels = new LabelSearch(model, incumbent);
  let annealed = 0;

  const status = (): StripStatus => {
    const plan = incumbent.best === undefined ? undefined : planOf(model, incumbent.best);
    const done = (annealing?.done ?? true) && labels.done;
    const bound = done ? incumbent.value : labels.bound;
    const gap = plan === undefined ? undefined : Math.max(0, (plan.value - bound) / Math.max(bound, 1e-9));
    const work = annealed + labels.work;
    return { done, bound, work, ...(plan ? { plan } : {}), ...(gap === undefined ? {} : { gap: done ? 0 : gap }) };
  };

  return {
    advance(work) {
      const end = annealed + labels.work + work;
      while (annealed + labels.work < end) {
        if (annealing && !annealing.done) {
          annealing.advance(CHUNK);
          annealed += CHUNK;
        } else if (labels.done) break;
        else labels.step();
      }
      return status();
    },
    get status() {
      return status();
    },
  };
}
