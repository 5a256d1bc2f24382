import { firstCells, fits } from './cells.ts';
import { type Incumbent, improve } from './incumbent.ts';
import { judge } from './judge.ts';
import { mostReserve } from './most-reserve.ts';
import type { Row } from './row.ts';
import { seeded } from './seeded.ts';
import type { StripModel } from './strip-model.ts';

/** Extra cost taken with odds of 1 to e, at first and, a hundredth of it, at last; as part of the cost when terms come in order. */
const HOT = 10;
const HOT_PART = 0.2;
/** Cost of a mm that a stack or the row is short of, while no plan is found yet (tried on random piles). */
const SHORT_STACK = 6;
const SHORT_ROW = 0.3;

/**
 * First plans by simulated annealing over cells: the show boards of all strips, their bottom boards, the pile. Cells are
 * swapped, stretches of strips turned round, boards turned over; what costs more is taken at falling odds.
 */
export class Annealing {
  private readonly model: StripModel;
  private readonly incumbent: Incumbent;
  private readonly random: () => number;
  private readonly steps: number;
  private step = 0;
  private readonly hot: number;
  private readonly cold: number;
  /** Board of each cell, -1 none: shows, bottoms, pile. */
  private readonly cells: Int32Array;
  private readonly flips: Uint8Array;
  private readonly row: Row;
  private current: number;
  private short = 0;
  private keptCost = Number.POSITIVE_INFINITY;
  private readonly kept: Int32Array;

  constructor(model: StripModel, incumbent: Incumbent, steps: number, seed: number) {
    const { strips } = model;
    this.model = model;
    this.incumbent = incumbent;
    this.random = seeded(seed);
    this.steps = steps;
    this.flips = Uint8Array.from({ length: strips }, (_, j) => j & 1);
    this.row = { edges: new Float64Array(strips + 1), spare: new Float64Array(strips) };
    this.cells = firstCells(model, this.random);
    this.kept = new Int32Array(2 * strips);
    this.current = this.cost();
    this.hot = model.problem.settings.preference.mode === 'weighted' ? HOT : Math.max(HOT, HOT_PART * this.current);
    this.cold = HOT * 0.01;
    this.note();
  }

  get done(): boolean {
    return this.step >= this.steps;
  }

  /** Goes on for some steps, then judges the best filling of these. */
  advance(count: number): void {
    const end = Math.min(this.steps, this.step + count);
    for (; this.step < end; this.step++) this.move(this.hot * (this.cold / this.hot) ** (this.step / this.steps));
    this.judgeKept();
  }

  private move(heat: number): void {
    const undo = this.change();
    if (undo === undefined) return;
    const cost = this.cost();
    if (cost <= this.current || this.random() < Math.exp((this.current - cost) / heat)) {
      this.current = cost;
      this.note();
    } else undo();
  }

  /** Keeps the cheapest whole filling since the last judgement. */
  private note(): void {
    if (this.short > 1e-9 || this.current >= this.keptCost - 1e-9) return;
    this.keptCost = this.current;
    this.kept.set(this.cells.subarray(0, 2 * this.model.strips));
  }

  private judgeKept(): void {
    const { incumbent, model, kept } = this;
    const { strips } = model;
    const cost = this.keptCost;
    this.keptCost = Number.POSITIVE_INFINITY;
    if (cost >= incumbent.value - model.prices.alike) return;
    const judged = judge(model, { shows: [...kept.subarray(0, strips)], bottoms: [...kept.subarray(strips)] });
    if (judged !== undefined) improve(model, incumbent, judged);
  }

  /** One random change; answers how to take it back, undefined when it is not allowed. */
  private change(): (() => void) | undefined {
    const { strips } = this.model;
    const kind = this.random();
    const j = Math.floor(this.random() * strips);
    const k = Math.floor(this.random() * strips);
    if (kind < 0.05) return this.turn(0, strips - 1);
    if (kind < 0.15) return this.turn(j, j);
    if (kind < 0.25) return this.reverse(Math.min(j, k), Math.max(j, k));
    if (kind < 0.4) return this.exchange(j, kind < 0.3 ? j : k);
    const a = Math.floor(this.random() * 2 * strips);
    const b = Math.floor(this.random() * (kind < 0.65 ? 2 * strips : this.cells.length));
    return this.swap(a, b) ? () => this.swap(a, b) : undefined;
  }

  /** Two strips change places; one strip its layers. */
  private exchange(j: number, k: number): (() => void) | undefined {
    const { strips } = this.model;
    if (j === k) return this.swap(j, strips + j) ? () => void this.swap(j, strips + j) : undefined;
    if (!this.swap(j, k)) return undefined;
    if (this.swap(strips + j, strips + k)) {
      return () => {
        this.swap(j, k);
        this.swap(strips + j, strips + k);
      };
    }
    this.swap(j, k);
    return undefined;
  }

  private turn(first: number, last: number): () => void {
    const flip = (): void => {
      for (let j = first; j <= last; j++) this.flips[j]! ^= 1;
    };
    flip();
    return flip;
  }

  private reverse(low: number, high: number): (() => void) | undefined {
    const { strips } = this.model;
    const done: [number, number][] = [];
    const undo = (): void => done.reverse().forEach(([a, b]) => void this.swap(a, b));
    for (let [x, y] = [low, high]; x < y; x++, y--) {
      for (const layer of [0, strips]) {
        if (!this.swap(layer + x, layer + y)) {
          undo();
          return undefined;
        }
        done.push([layer + x, layer + y]);
      }
    }
    return undo;
  }

  private swap(a: number, b: number): boolean {
    const { cells, model } = this;
    const [x, y] = [cells[a]!, cells[b]!];
    if (!fits(model, x, b) || !fits(model, y, a)) return false;
    [cells[a], cells[b]] = [y, x];
    return true;
  }

  /** Cost without the underside and the wish for symmetry, and with what the plan is short of. */
  private cost(): number {
    const { model, cells } = this;
    const { strips, prices, tone, problem } = model;
    const below = problem.settings.layers === 'two';
    let cost = 0;
    for (let j = 0; j < strips; j++) {
      const show = cells[j]!;
      if (show < 0 || (below && cells[strips + j]! < 0)) return Number.POSITIVE_INFINITY;
      cost += this.stack(j, show, cells[strips + j]!);
      if (j === 0) continue;
      cost += prices.of.tone * Math.abs(tone[show]! - tone[cells[j - 1]!]!);
      if (this.flips[j] === this.flips[j - 1]) cost += prices.of.rings;
    }
    const reserve = mostReserve(model, this.row);
    const narrow = Math.max(0, 2 * model.half - this.row.edges[strips]!);
    this.short = Math.max(0, -reserve) + narrow;
    cost += prices.of.reserve * (problem.settings.reserveCap - Math.min(problem.settings.reserveCap, reserve));
    return cost + SHORT_STACK * Math.max(0, -reserve) + SHORT_ROW * narrow;
  }

  private stack(j: number, show: number, bottom: number): number {
    const { model } = this;
    const cost = model.showCost[2 * show + this.flips[j]!]!;
    const width = model.width[show]!;
    this.row.edges[j + 1] = this.row.edges[j]! + (bottom < 0 ? width : Math.min(width, model.width[bottom]!));
    this.row.spare[j] = model.thick[show]! - model.base + (bottom < 0 ? 0 : model.thick[bottom]!);
    return bottom < 0 ? cost : cost + model.bottomCost[bottom]!;
  }
}
