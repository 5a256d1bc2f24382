import { Annealing } from './anneal.ts';
import type { Incumbent } from './incumbent.ts';
import type { Judged } from './judge.ts';
import { LabelSearch } from './label-search.ts';
import { planOf } from './plan-of.ts';
import { polish } from './polish.ts';
import { type StripModel, stripModel } from './strip-model.ts';
import type { StripStatus } from './strip-plan.ts';
import type { StripProblem } from './strip-problem.ts';

export interface StripSearchOptions {
  readonly seed?: number;
  /** Only plans cheaper than this are looked for, as if one of that cost were known. */
  readonly below?: number;
  /** Rounds of annealing before the exact search begins. */
  readonly rounds?: number;
}

/** A search that goes on for as long as it is told, and always knows its best plan and what no plan can beat. */
export interface StripSearch {
  /** Goes on for about that much work, less when it gets done. */
  advance(work: number): StripStatus;
  readonly status: StripStatus;
}

/** Steps of a round of annealing, fewer for few boards (by pairs of boards); rounds before the exact search (tried: more, shorter or longer ones find less in the time). */
const ROUND = 20_000;
const ROUND_PER_PAIR = 50;
const ROUNDS = 3;
/** Rounds after that, each after so much exact work: a better plan spares the exact search more than it costs. */
const LATER_ROUNDS = 12;
const WORK_BETWEEN = 100_000;
/** Work of judging one arrangement (measured roughly). */
const JUDGE_WORK = 4;
/** Steps between two looks at the work left. */
const CHUNK = 1_000;

/**
 * Begins to search for the best plan. The same problem gives the same plan at the same work, in whatever order its boards come.
 */
export function planStrips(problem: StripProblem, options: StripSearchOptions = {}): StripSearch {
  return new Search(stripModel(problem), options);
}

class Search implements StripSearch {
  private readonly model: StripModel;
  private readonly incumbent: Incumbent;
  private readonly labels: LabelSearch;
  private readonly seed: number;
  private readonly rounds: number;
  private readonly round: number;
  private annealing: Annealing | undefined;
  private polished: Judged | undefined;
  private begun = 0;
  private annealed = 0;

  constructor(model: StripModel, options: StripSearchOptions) {
    this.model = model;
    this.incumbent = { value: options.below ?? Number.POSITIVE_INFINITY };
    this.labels = new LabelSearch(model, this.incumbent);
    this.seed = options.seed ?? 1;
    this.round = Math.min(ROUND, ROUND_PER_PAIR * model.boards.length ** 2);
    this.rounds = model.boards.length < model.strips ? 0 : (options.rounds ?? ROUNDS);
  }

  advance(work: number): StripStatus {
    const end = this.work + work;
    while (this.work < end && !this.done) this.step();
    return this.status;
  }

  get status(): StripStatus {
    const { incumbent, labels, done, work } = this;
    const bound = done ? incumbent.value : labels.bound;
    if (incumbent.best === undefined) return { done, bound, work };
    const plan = planOf(this.model, incumbent.best);
    const gap = done ? 0 : Math.max(0, plan.value - bound) / Math.max(bound, 1e-9);
    return { done, bound, work, plan, gap };
  }

  private get work(): number {
    return Math.round(this.annealed + this.labels.work);
  }

  private get done(): boolean {
    return this.annealing === undefined && this.begun >= this.rounds && this.labels.done;
  }

  private step(): void {
    if (this.annealing === undefined && this.roundIsDue()) {
      this.annealing = new Annealing(this.model, this.incumbent, this.round, this.seed + this.begun++);
    }
    if (this.annealing === undefined) {
      this.labels.step();
      this.polishBest();
      return;
    }
    this.annealing.advance(CHUNK);
    this.annealed += CHUNK;
    if (!this.annealing.done) return;
    this.annealing = undefined;
    this.polishBest();
  }

  private polishBest(): void {
    if (this.incumbent.best === this.polished) return;
    this.annealed += JUDGE_WORK * polish(this.model, this.incumbent);
    this.polished = this.incumbent.best;
  }

  private roundIsDue(): boolean {
    if (this.begun < this.rounds) return true;
    const later = this.begun - this.rounds;
    return this.rounds > 0 && later < LATER_ROUNDS && this.labels.work >= WORK_BETWEEN * (later + 1);
  }
}
