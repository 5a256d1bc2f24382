import { arrange, type Effort, type Incumbent } from './arrange.ts';
import { Heap } from './heap.ts';
import { type Label, labelReserve, reserveCost } from './label.ts';
import { Relaxation, type Span } from './multipliers.ts';
import { requirementsOf } from './requirements.ts';
import { roleSteps, type RoleState } from './role-steps.ts';
import { BOTTOM, type RoleTable, SHOW, SINGLE, stateAt } from './role-table.ts';
import type { StripModel } from './strip-model.ts';
import { byTone, toneWindows } from './tone-window.ts';

/** A span with a lower bound that may become tighter. */
interface SpanEntry {
  readonly kind: 'span';
  readonly key: number;
  readonly span: Span;
  readonly multipliers: readonly number[];
}

/** A span opened: boards get their roles one by one, by falling width. */
interface Opened {
  readonly span: Span;
  readonly table: RoleTable;
  readonly fixed: number;
}

interface RoleEntry {
  readonly kind: 'roles';
  readonly key: number;
  readonly opened: Opened;
  /** Boards with a role. */
  readonly count: number;
  readonly state: RoleState;
  /** Cost so far, requirements paid for. */
  readonly price: number;
  readonly role: number;
  readonly before?: RoleEntry;
}

/** A label to be arranged, its first show boards given. */
interface LabelEntry {
  readonly kind: 'label';
  readonly key: number;
  readonly label: Label;
  readonly first: readonly number[];
}

type Entry = SpanEntry | RoleEntry | LabelEntry;

/** Spans are halved down to this many mm of reserve (tried: finer costs more tables than it saves labels). */
const FINEST_SPAN = 0.4;
/** Subgradient steps for a span at first, and after it was halved. */
const FIRST_STEPS = 12;
const HALVED_STEPS = 25;
/** Orders and pairings looked at before a label is split by its next show board. */
const LABEL_EFFORT = 20_000;
/** Cost of a mm of blank that is not covered, to begin with (of the size found on random piles). */
const FIRST_WIDTH_PRICE = 0.03;
/** Work of one table, and of one role entry, in orders looked at (measured roughly). */
const TABLE_WORK = 40;

/**
 * Best first over everything that is still possible, each with a lower bound of its cost: spans of tone and reserve, boards
 * with roles given one by one, labels. What comes out of the heap has the least bound of all, so that bound holds for the whole
 * search; a label that comes out is solved exactly.
 */
export class LabelSearch {
  work = 0;
  private readonly model: StripModel;
  private readonly incumbent: Incumbent;
  private readonly heap = new Heap<Entry>();
  private readonly order: Int32Array;
  private readonly tones: readonly number[];
  private readonly relaxation: Relaxation;
  private readonly windows: ReturnType<typeof toneWindows>;
  private window = 0;
  private hint: readonly number[];
  private readonly solved = new Set<string>();

  constructor(model: StripModel, incumbent: Incumbent) {
    this.model = model;
    this.incumbent = incumbent;
    this.tones = byTone(model);
    this.order = Int32Array.from(model.boards.keys()).sort((a, b) => model.width[b]! - model.width[a]! || a - b);
    this.relaxation = new Relaxation(model, this.order, this.tones);
    this.windows = toneWindows(model, this.tones);
    this.hint = requirementsOf(model, 0).map((_, c) => (c === 0 ? FIRST_WIDTH_PRICE : 0));
  }

  /** Windows are still without a bound. */
  private get starting(): boolean {
    return this.window < this.windows.length;
  }

  get done(): boolean {
    return !this.starting && this.heap.least >= this.ceiling;
  }

  /** No plan costs less. */
  get bound(): number {
    if (this.starting) return Math.min(0, this.incumbent.value);
    return Math.min(this.heap.least, this.incumbent.value);
  }

  private get ceiling(): number {
    return this.incumbent.value === Number.POSITIVE_INFINITY
      ? Number.POSITIVE_INFINITY
      : this.incumbent.value - this.model.prices.alike;
  }

  step(): void {
    if (this.starting) {
      this.startWindow();
      return;
    }
    const entry = this.heap.pop();
    if (entry.kind === 'span') this.openSpan(entry);
    else if (entry.kind === 'roles') this.giveRoles(entry);
    else this.arrangeLabel(entry);
  }

  private startWindow(): void {
    const window = this.windows[this.window++]!;
    const span: Span = { window, low: 0, high: this.model.problem.settings.reserveCap };
    this.pushSpan(span, this.hint, FIRST_STEPS);
  }

  private pushSpan(span: Span, start: readonly number[], steps: number): void {
    const enough = Number.isFinite(this.ceiling) ? this.ceiling : 1e6;
    this.work += TABLE_WORK;
    const { bound, multipliers } = this.relaxation.raise(span, start, enough, steps);
    if (bound === Number.POSITIVE_INFINITY) return;
    this.hint = multipliers;
    if (bound < this.ceiling) this.heap.push({ kind: 'span', key: bound, span, multipliers });
  }

  private openSpan(entry: SpanEntry): void {
    const { span, multipliers } = entry;
    if (span.high - span.low > FINEST_SPAN) {
      const middle = (span.low + span.high) / 2;
      this.pushSpan({ ...span, low: middle }, multipliers, HALVED_STEPS);
      this.pushSpan({ ...span, high: middle }, multipliers, HALVED_STEPS);
      return;
    }
    this.work += TABLE_WORK;
    const { table, fixed } = this.relaxation.table(span, multipliers);
    const opened: Opened = { span, table, fixed };
    this.heap.push({ kind: 'roles', key: entry.key, opened, count: 0, state: { begun: 0, open: 0 }, price: 0, role: 0 });
  }

  private giveRoles(entry: RoleEntry): void {
    this.work++;
    const { opened, count, state } = entry;
    const { table, fixed } = opened;
    if (count === this.order.length) {
      this.pushLabel(entry);
      return;
    }
    const i = this.order[count]!;
    const next = table.values[count + 1]!;
    for (const step of roleSteps(this.model, i, table.roles[i]!, state, table.prices)) {
      const price = entry.price + step.price;
      const key = price + next[stateAt(this.model.strips, step.to.begun, step.to.open)]! + fixed;
      if (key >= this.ceiling || key === Number.POSITIVE_INFINITY) continue;
      this.heap.push({
        kind: 'roles',
        key: Math.max(key, entry.key),
        opened,
        count: count + 1,
        state: step.to,
        price,
        role: step.role,
        before: entry,
      });
    }
  }

  private pushLabel(entry: RoleEntry): void {
    const { model } = this;
    const { span } = entry.opened;
    const label = this.labelOf(entry);
    const reserve = labelReserve(model, label);
    if (reserve === undefined || reserve < span.low - 1e-9) return;
    const key = label.cost + label.range + reserveCost(model, Math.min(reserve, span.high));
    if (key >= this.ceiling) return;
    const name = `${label.shows.join()}|${[...label.alone].join()}|${label.bottoms.join()}`;
    if (this.solved.has(name)) return;
    this.solved.add(name);
    this.heap.push({ kind: 'label', key: Math.max(key, entry.key), label, first: [] });
  }

  private labelOf(entry: RoleEntry): Label {
    const { model } = this;
    const roles = new Map<number, number>();
    for (let at: RoleEntry | undefined = entry; at?.before !== undefined; at = at.before) {
      roles.set(this.order[at.count - 1]!, at.role);
    }
    const having = (role: number): number[] => this.tones.filter((i) => (roles.get(i)! & role) !== 0);
    const shows = having(SHOW | SINGLE);
    const bottoms = having(BOTTOM);
    let cost = 0;
    for (const i of shows) cost += Math.min(model.showCost[2 * i]!, model.showCost[2 * i + 1]!);
    for (const i of bottoms) cost += model.bottomCost[i]!;
    return { shows, alone: new Set(having(SINGLE)), bottoms, cost, range: entry.opened.span.window.cost };
  }

  private arrangeLabel(entry: LabelEntry): void {
    const { label, first } = entry;
    const whole = first.length === this.model.strips;
    const effort: Effort = { spent: 0, limit: whole ? Number.POSITIVE_INFINITY : LABEL_EFFORT };
    const finished = arrange(this.model, label, first, this.incumbent, effort);
    this.work += effort.spent;
    if (finished) return;
    for (const i of label.shows) {
      if (!first.includes(i)) this.heap.push({ ...entry, first: [...first, i] });
    }
  }
}
